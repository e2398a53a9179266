package afterlength.workshop.examination;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;

/** A form with files, written as a browser writes it (multipart/form-data). */
final class FileForm {
    private static final String BETWEEN = "between-the-parts";
    private final ByteArrayOutputStream body = new ByteArrayOutputStream();

    FileForm field(String name, String value) {
        return part("name=\"" + name + "\"", "", value.getBytes(StandardCharsets.UTF_8));
    }

    FileForm file(String fileName, byte[] bytes) {
        return part(
                "name=\"files\"; filename=\"" + fileName + "\"", "Content-Type: application/octet-stream\r\n", bytes);
    }

    private FileForm part(String disposition, String header, byte[] bytes) {
        write(("--" + BETWEEN + "\r\nContent-Disposition: form-data; " + disposition + "\r\n" + header + "\r\n")
                .getBytes(StandardCharsets.UTF_8));
        write(bytes);
        write("\r\n".getBytes(StandardCharsets.UTF_8));
        return this;
    }

    HttpRequest.Builder onto(HttpRequest.Builder request) {
        write(("--" + BETWEEN + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return request.header("Content-Type", "multipart/form-data; boundary=" + BETWEEN)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()));
    }

    private void write(byte[] bytes) {
        try {
            body.write(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
