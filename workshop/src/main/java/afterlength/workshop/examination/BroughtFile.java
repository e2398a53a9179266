package afterlength.workshop.examination;

import afterlength.sight.picture.PictureFile;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Files that a form brings. */
final class BroughtFile {
    private static final int LONGEST_NAME = 80;

    private BroughtFile() {}

    /** The chosen files of the field "files"; a field left empty sends one without a name. */
    static List<UploadedFile> list(Context context) {
        return context.uploadedFiles("files").stream()
                .filter(file -> !file.filename().isBlank())
                .toList();
    }

    /** A file that is too large is not read further than it takes to know that. */
    static PictureFile read(UploadedFile file) {
        try (InputStream content = file.content()) {
            byte[] bytes = content.readNBytes((int) PictureFile.LARGEST_BYTES + 1);
            return new PictureFile(nameAlone(file.filename()), bytes);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Some browsers send the folder too; it is nobody's business. */
    private static String nameAlone(String fileName) {
        String name = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) + "…" : name;
    }
}
