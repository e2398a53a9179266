package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.sight.card.Card;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.measure.Print;
import afterlength.sight.measure.Progress;
import afterlength.sight.picture.PictureFile;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.MeasureDocument;
import afterlength.start.verbs.MeasureReply;
import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class MeasureCommandTest {
    private static final byte[] PICTURE = CardPhoto.png(Card.POCKET);

    /** Two places 60 mm apart in the plane of the card, and a square of 20 mm. */
    private static final String MARKS = """
            { "card": "pocket", "check_lines_mm": [100.0, 100.0], "marks": [
              { "id": "crack", "kind": "line", "pixels": [[100, 640], [460, 640]], "height": "in plane" },
              { "id": "worn", "kind": "area", "pixels": [[100, 100], [220, 100], [220, 220], [100, 220]], "height_mm": 0 },
              { "id": "pin", "kind": "point", "pixels": [[160.0, 220]] } ] }
            """;

    @TempDir
    static Path folder;

    @BeforeAll
    static void takeThePicture() throws IOException {
        Files.write(folder.resolve("photo.jpg"), PICTURE);
    }

    private static Typed measure(String standardInput, String... arguments) {
        List<String> typed = new ArrayList<>(List.of("measure"));
        typed.addAll(List.of(arguments));
        CommandLine line =
                new CommandLine(Verb.all(), Map.of("measure", new MeasureCommand()), new OpenShop(), Typed.MARCH);
        return Typed.at(line, standardInput.getBytes(StandardCharsets.UTF_8), typed.toArray(String[]::new));
    }

    private static String photo() {
        return folder.resolve("photo.jpg").toString();
    }

    @Test
    void everyMarkHasItsMillimetresAndTheirPlusMinus() {
        Typed typed = measure(MARKS, photo());
        assertThat(typed.exit()).as(typed.out()).isZero();
        JsonNode answer = typed.json();
        assertThat(answer.propertyNames()).containsExactly("card", "marks", "fit", "caveats");
        JsonNode crack = answer.get("marks").get(0);
        assertThat(crack.get("length_mm").asDouble()).isCloseTo(60, within(0.05));
        assertThat(crack.get("plus_minus_mm").asDouble()).isBetween(0.3, 0.6);
        assertThat(crack.get("terms_mm").propertyNames()).containsExactly("picking", "card", "height", "print");
        JsonNode worn = answer.get("marks").get(1);
        assertThat(worn.get("area_mm2").asDouble()).isCloseTo(400, within(1.0));
        assertThat(worn.get("outline_mm").asDouble()).isCloseTo(80, within(0.1));
        JsonNode pin = answer.get("marks").get(2);
        assertThat(pin.get("x_mm").asDouble()).isCloseTo(10, within(0.05));
        assertThat(pin.get("y_mm").asDouble()).isCloseTo(20, within(0.05));
        assertThat(answer.get("fit").propertyNames())
                .containsExactly("corners", "residual_px", "tilt_deg", "camera_height_mm", "focal_px", "k1");
        assertThat(answer.get("fit").get("corners").asInt()).isEqualTo(40);
        assertThat(answer.get("caveats").get(1).asString())
                .isEqualTo(
                        "1 of 3 marks have no height over the card; 15 mm up or down are counted. Give height or height_mm.");
    }

    @Test
    void theMarksMayLieInAFile() throws IOException {
        Path marks = Files.writeString(folder.resolve("marks.json"), MARKS);
        assertThat(measure("", photo(), "--marks", marks.toString()).out())
                .isEqualTo(measure(MARKS, photo()).out());
    }

    @Test
    void whatCannotBeReadIsToldAtOnce() {
        Typed typed = measure("""
                { "card": "visiting", "check_lines_mm": [100, 80], "marks": [
                  { "id": "a", "kind": "line", "pixels": [[1, 2]], "height": "top", "height_mm": 3 },
                  { "id": "a", "kind": "point", "pixels": [[1, -2]], "colour": "red" } ] }
                """, photo());
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.problems())
                .containsExactly(
                        "/card: card is the text \"visiting\"; give one of: body, pocket.",
                        "/check_lines_mm/1: check_lines_mm/1 is 80 mm; give 90 to 110 mm, printers scale by a few per cent at"
                                + " most.",
                        "/marks/0/pixels: marks/0/pixels is a list; a list of 2 to 5000 is wanted, this one has 1.",
                        "/marks/0/height: A mark has either height or height_mm. Leave out one of them.",
                        "/marks/1/id: There are two marks called \"a\". Give each its own id.",
                        "/marks/1/pixels/0/1: marks/1/pixels/0/1 is -2 pixels; give 0 to 30000 pixels.",
                        "/marks/1/colour: marks/1 has no key \"colour\". Keys known here: id, kind, pixels, height, height_mm.");
    }

    @Test
    void aMarkOutsideThePictureIsRefused() {
        String outside = MARKS.replace("[460, 640]", "[4600, 640]");
        assertThat(measure(outside, photo()).problems())
                .containsExactly(
                        "/marks/0/pixels/1: The point (4600, 640) of \"crack\" lies outside the picture, which is 760 × 740"
                                + " pixels upright. Count from its upper left corner.");
    }

    @Test
    void aPhotographThatCannotBeMeasuredIsRefusedWithItsReason() throws IOException {
        assertThat(measure(MARKS, folder.resolve("none.jpg").toString()).problems())
                .containsExactly(
                        ": The photograph \"" + folder.resolve("none.jpg") + "\" is not there. Check its name.");
        Path text = Files.writeString(folder.resolve("text.jpg"), "no picture");
        assertThat(measure(MARKS, text.toString()).problems())
                .containsExactly(
                        ": The file is no kind of picture that this program knows, whatever its name says. Pictures are"
                                + " taken as JPEG or PNG; open it and save it as JPEG.");
        assertThat(measure(MARKS).problems())
                .containsExactly(": measure needs a photograph. Type ./afterlength measure PHOTO --marks FILE.");
        assertThat(measure(MARKS, photo(), "--colour").problems())
                .containsExactly(": There is no option \"--colour\". Type --help to see what there is.");
    }

    @Test
    void theExampleInTheHelpIsReadWithoutAProblem() {
        Typed help = measure("", "--help");
        assertThat(help.exit()).isZero();
        String pasted = help.out().substring(help.out().indexOf('{'), help.out().lastIndexOf('}') + 1);
        DocumentReader document = DocumentReader.of(pasted.getBytes(StandardCharsets.UTF_8));
        assertThat(MeasureDocument.read(document).marks()).hasSize(4);
        assertThat(document.problems()).isEmpty();
    }

    /** Whatever the document holds, it is answered or refused. To run one case again, use its seed. */
    @Test
    void neverAFaultOfOurOwn() {
        MeasuredPhoto photo = (MeasuredPhoto) PhotoMeasuring.of(
                new PictureFile("photo.jpg", PICTURE), PhotoRequest.of("pocket", Print.UNCHECKED), Progress.SILENT);
        for (long seed = 0; seed < 2000; seed++) {
            byte[] changed = FuzzTest.changed(MARKS, new SplittableRandom(seed));
            DocumentReader reader = DocumentReader.of(changed);
            MeasureDocument document = MeasureDocument.read(reader);
            Reply reply =
                    reader.hasProblems() ? new Reply.Refused(reader.problems()) : MeasureReply.of(document, photo);
            assertThat(reply.json()).as("seed " + seed).startsWith("{");
        }
    }
}
