package afterlength.workshop.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** A desk with some rooms on any free port, asked over real HTTP; its pages come back parsed. */
public final class OpenedDesk implements AutoCloseable {
    private final Desk desk;
    private final HttpClient client = HttpClient.newHttpClient();

    private OpenedDesk(Desk desk) {
        this.desk = desk;
    }

    public static OpenedDesk with(Room... rooms) {
        return new OpenedDesk(Desk.open(0, List.of(rooms)));
    }

    /**
     * What came back.
     *
     * @param location where a redirect leads, from the root; empty without one
     */
    public record Answer(int status, String location, Document page) {
        /** The words a person reads, in one line. */
        public String words() {
            return page.body().text();
        }

        public String words(String selector) {
            return page.select(selector).text();
        }

        public List<String> lines(String selector) {
            return page.select(selector).eachText();
        }
    }

    public Answer get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(at(path)).GET();
        return send(headers.length == 0 ? request : request.headers(headers));
    }

    /** Posts a form of names and values in turn. */
    public Answer post(String path, String... form) {
        List<String> pairs = new ArrayList<>();
        for (int n = 0; n < form.length; n += 2) {
            pairs.add(encoded(form[n]) + "=" + encoded(form[n + 1]));
        }
        return send(HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs))));
    }

    /** Posts a form and looks at the page it leads to. */
    public Answer postAndFollow(String path, String... form) {
        Answer answer = post(path, form);
        return answer.location().isEmpty() ? answer : get(answer.location());
    }

    private Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            String location = response.headers().firstValue("Location").orElse("");
            return new Answer(
                    response.statusCode(), location.replaceFirst("^http://[^/]+", ""), Jsoup.parse(response.body()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    public URI at(String path) {
        return URI.create(desk.address()).resolve(path.replaceFirst("#.*", ""));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        desk.close();
    }
}
