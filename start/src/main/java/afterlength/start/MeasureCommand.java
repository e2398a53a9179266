package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoAnswer;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.Progress;
import afterlength.sight.picture.PictureFile;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.MeasureDocument;
import afterlength.start.verbs.MeasureReply;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * {@code measure PHOTO --marks FILE}: lengths and areas of marks on a photograph in which a printed card lies. Without
 * {@code --marks} the document comes from standard input.
 */
final class MeasureCommand implements Command {
    static final String NAME = "measure";

    /** An example of the document; the photograph cannot be shown here. */
    static final String EXAMPLE = """
            {
              "card": "body",
              "check_lines_mm": [100.0, 100.0],
              "marks": [
                { "id": "crack", "kind": "line", "pixels": [[1020.5, 884.0], [1342.0, 911.5]], "height_mm": 8 },
                { "id": "worn place", "kind": "area", "pixels": [[600, 700], [760, 690], [720, 840]], "height": "top" },
                { "id": "template", "kind": "line", "pixels": [[300, 300], [900, 320]], "height": "in plane" },
                { "id": "pin", "kind": "point", "pixels": [[512.5, 400.0]], "height": "edge" }
              ]
            }
            """;

    private static final String KEYS = """

              card            body or pocket: which card lies in the picture
              check_lines_mm  optional: the two check lines of this print, the level one and the upright one, as
                              measured with a steel rule; without them every length is uncertain by 1 %
              marks           each with id; kind: line, area or point; pixels of the upright picture, from its upper
                              left corner, the centre of the first pixel being (0.5, 0.5); and one of: height_mm, over
                              the plane of the card; height: in plane, edge (0), half (8) or top (15) of the arch

            The answer holds card; marks, each with length_mm and plus_minus_mm, or area_mm2, plus_minus_mm2 and outline_mm,
            or x_mm, y_mm and plus_minus_mm on the card, with the terms of the plus and minus as standard deviations, or
            not_measured with the reason; fit with corners, residual_px, tilt_deg, camera_height_mm, focal_px and k1; and
            caveats.
            """;

    @Override
    public String summary() {
        return "lengths in a photograph with a printed card in it; PHOTO --marks FILE";
    }

    static String help() {
        return "./afterlength measure PHOTO [--marks FILE]\n\n"
                + "Lengths and areas of what is marked on a photograph in which a printed card lies.\n"
                + "Reads one JSON document from FILE, or from standard input without --marks, and writes one to standard output.\n\n"
                + "An example:\n\n" + EXAMPLE + "\nKeys\n" + KEYS;
    }

    @Override
    public int run(List<String> arguments, Console console) {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            console.answer(help());
            return Exit.ANSWERED;
        }
        Reply reply = reply(arguments, console);
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private static Reply reply(List<String> arguments, Console console) {
        if (arguments.isEmpty() || arguments.get(0).startsWith("-")) {
            return refused(null, "measure needs a photograph. Type ./afterlength measure PHOTO --marks FILE.");
        }
        Options options = Options.read(arguments.subList(1, arguments.size()), Set.of("--marks"), Set.of());
        if (!options.problems().isEmpty()) {
            return new Reply.Refused(options.problems());
        }
        Optional<String> marks = options.find("--marks").filter(file -> !file.equals("-"));
        Question question = marks.map(Question::from).orElseGet(() -> Question.from(console.in()));
        return question instanceof Question.Opened opened
                ? reply(opened.document(), arguments.get(0))
                : new Reply.Refused(List.of(((Question.Unreadable) question).problem()));
    }

    private static Reply reply(DocumentReader question, String photo) {
        MeasureDocument document = MeasureDocument.read(question);
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        try (InputStream stream = Files.newInputStream(Path.of(photo))) {
            byte[] bytes = stream.readNBytes((int) PictureFile.LARGEST_BYTES + 1);
            return reply(document, photo, new PictureFile(photo, bytes));
        } catch (NoSuchFileException missing) {
            return refused(photo, "The photograph \"" + photo + "\" is not there. Check its name.");
        } catch (IOException | InvalidPathException broken) {
            return refused(
                    photo, "The photograph \"" + photo + "\" cannot be read. Name a file that can be opened and read.");
        }
    }

    private static Reply reply(MeasureDocument document, String photo, PictureFile file) {
        PhotoAnswer answer = PhotoMeasuring.of(file, document.request(), Progress.SILENT);
        if (answer instanceof MeasuredPhoto measured) {
            return MeasureReply.of(document, measured);
        }
        return refused(photo, ((PhotoAnswer.Refused) answer).reason());
    }

    private static Reply refused(@Nullable String value, String message) {
        return new Reply.Refused(List.of(new Problem("", value, message)));
    }
}
