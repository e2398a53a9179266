package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.DocumentReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A document opened from a file or from standard input, or the reason why there is none. */
sealed interface Question {
    /** Sixteen mebibytes: a thousand times the longest list of points we know, and far from filling the memory. */
    int LARGEST_BYTES = 16 * 1024 * 1024;

    record Opened(DocumentReader document) implements Question {}

    record Unreadable(Problem problem) implements Question {}

    static Question from(String file) {
        try (InputStream stream = Files.newInputStream(Path.of(file))) {
            return limited(stream, "The file \"" + file + "\"");
        } catch (NoSuchFileException missing) {
            return unreadable(
                    file,
                    "The file \"" + file + "\" is not there. Check its name, or name none to read standard input.");
        } catch (IOException | InvalidPathException broken) {
            return unreadable(
                    file, "The file \"" + file + "\" cannot be read. Name a file that can be opened and read.");
        }
    }

    static Question from(InputStream standardInput) {
        try {
            return limited(standardInput, "The document");
        } catch (IOException broken) {
            return unreadable("-", "Standard input broke off. Send the document again.");
        }
    }

    private static Question limited(InputStream stream, String what) throws IOException {
        byte[] bytes = stream.readNBytes(LARGEST_BYTES + 1);
        return bytes.length > LARGEST_BYTES
                ? unreadable(
                        "more than " + LARGEST_BYTES + " bytes", what + " is longer than 16 MiB. Give a shorter one.")
                : new Opened(DocumentReader.of(bytes));
    }

    private static Question unreadable(String value, String message) {
        return new Unreadable(new Problem("", value, message));
    }
}
