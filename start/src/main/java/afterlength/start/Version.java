package afterlength.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Which build this is; Maven writes the number into {@code version.txt}. */
public final class Version {
    private Version() {}

    public static String get() {
        try (InputStream file =
                Objects.requireNonNull(Version.class.getResourceAsStream("version.txt"), "version.txt")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
