package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.verbs.Sheet;
import afterlength.workshop.paper.SheetTooSmall;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes the sheet of a verb into the files that were wished for; what could not be written is a problem like any other. */
final class SheetFiles {
    private final Sheet sheet;
    private final LocalDate day;
    private final List<Problem> problems = new ArrayList<>();

    private SheetFiles(Sheet sheet, LocalDate day) {
        this.sheet = sheet;
        this.day = day;
    }

    static List<Problem> write(Sheet sheet, SheetWishes wishes, LocalDate day) {
        SheetFiles files = new SheetFiles(sheet, day);
        wishes.findPdf().ifPresent(file -> files.pdf(file, wishes));
        wishes.findSvg().ifPresent(file -> files.write(file, files.svg()));
        return files.problems;
    }

    private void pdf(String file, SheetWishes wishes) {
        try {
            write(file, sheet.pdf(wishes.paper(), day, drawnBy()));
        } catch (SheetTooSmall tooSmall) {
            note(
                    wishes.paper().words(),
                    "The drawing has no room on a sheet of " + wishes.paper().words()
                            + " at 1 : 1, and nothing is made smaller. Leave out --pdf and take --svg.");
        }
    }

    private byte[] svg() {
        return sheet.svg(day, drawnBy()).getBytes(StandardCharsets.UTF_8);
    }

    private static String drawnBy() {
        return "Afterlength " + Version.get();
    }

    private void write(String file, byte[] bytes) {
        try {
            Files.write(Path.of(file), bytes);
        } catch (IOException | InvalidPathException broken) {
            note(
                    file,
                    "The file \"" + file
                            + "\" cannot be written. Name a file in a folder that is there and may be written to.");
        }
    }

    private void note(String value, String message) {
        problems.add(new Problem("", value, message));
    }
}
