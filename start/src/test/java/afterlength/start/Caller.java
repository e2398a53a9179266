package afterlength.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** Asks a shop over HTTP as a browser would, without following redirects. */
final class Caller {
    private static final Duration LONGEST = Duration.ofSeconds(60);

    private final String address;
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    Caller(String address) {
        this.address = address;
    }

    /**
     * What came back.
     *
     * @param location where a redirect leads, from the root; empty without one
     */
    record Answer(int status, String kind, String location, String text) {
        boolean page() {
            return kind.startsWith("text/html");
        }
    }

    Answer get(String path) throws IOException {
        return send(HttpRequest.newBuilder(at(path)).GET());
    }

    Answer post(String path, Map<String, String> form) throws IOException {
        return post(
                path,
                form.entrySet().stream()
                        .map(field -> Map.entry(field.getKey(), field.getValue()))
                        .toList());
    }

    Answer post(String path, List<Map.Entry<String, String>> form) throws IOException {
        return send(HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(Query.body(form))));
    }

    /** Posts a form with one file. */
    Answer upload(String path, List<Map.Entry<String, String>> form, String field, String fileName, byte[] file)
            throws IOException {
        return send(HttpRequest.newBuilder(at(path))
                .header("Content-Type", Multipart.KIND)
                .POST(HttpRequest.BodyPublishers.ofByteArray(Multipart.of(form, field, fileName, file))));
    }

    private Answer send(HttpRequest.Builder request) throws IOException {
        try {
            HttpResponse<byte[]> response =
                    client.send(request.timeout(LONGEST).build(), HttpResponse.BodyHandlers.ofByteArray());
            return new Answer(
                    response.statusCode(),
                    response.headers().firstValue("Content-Type").orElse(""),
                    response.headers().firstValue("Location").orElse("").replaceFirst("^https?://[^/]+", ""),
                    new String(response.body(), StandardCharsets.UTF_8));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }

    private URI at(String path) {
        try {
            return URI.create(address).resolve(path.replaceFirst("#.*", ""));
        } catch (IllegalArgumentException noAddress) {
            throw new UncheckedIOException(new IOException("no address: " + path, noAddress));
        }
    }
}
