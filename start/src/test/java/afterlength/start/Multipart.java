package afterlength.start;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** A form with one file, as a browser sends it. */
final class Multipart {
    static final String BOUNDARY = "----a-boundary-that-no-picture-holds";
    static final String KIND = "multipart/form-data; boundary=" + BOUNDARY;

    private Multipart() {}

    static byte[] of(List<Map.Entry<String, String>> form, String field, String fileName, byte[] file)
            throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> each : form) {
            body.write(utf8("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + each.getKey()
                    + "\"\r\n\r\n" + each.getValue() + "\r\n"));
        }
        body.write(utf8("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\""
                + fileName + "\"\r\nContent-Type: application/octet-stream\r\n\r\n"));
        body.write(file);
        body.write(utf8("\r\n--" + BOUNDARY + "--\r\n"));
        return body.toByteArray();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
