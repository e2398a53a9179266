package afterlength.workshop.setup;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;

/**
 * Measures how soon the workbench answers a drag, over real HTTP, as the page asks it: run it against an opened shop whose first
 * visit has a saved set-up, with the address as argument. Not a test; it prints its figures.
 */
final class LiveBenchLoop {
    private static final int WARM_UP = 300;
    private static final int REQUESTS = 1000;

    private LiveBenchLoop() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        URI bench = URI.create(arguments[0]).resolve("/visits/1/setup");
        Map<String, String> form =
                Fields.of(client.send(HttpRequest.newBuilder(bench).build(), HttpResponse.BodyHandlers.ofString())
                        .body());
        form.put("moving", "yes");
        double[] took_ms = new double[REQUESTS];
        for (int i = -WARM_UP; i < REQUESTS; i++) {
            form.put("board_end_clearance_mm/bass", String.format(Locale.ROOT, "%.1f", 5 + Math.floorMod(i, 20) * 0.1));
            HttpRequest request = HttpRequest.newBuilder(bench.resolve("setup/drawing"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(encoded(form)))
                    .build();
            long began = System.nanoTime();
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            double ms = (System.nanoTime() - began) / 1e6;
            if (answer.statusCode() != 200 || !answer.body().contains("data-live=\"front\"")) {
                throw new IOException("no drawing came back: " + answer.statusCode());
            }
            if (i >= 0) {
                took_ms[i] = ms;
            }
        }
        Arrays.sort(took_ms);
        System.out.printf(
                Locale.ROOT,
                "%d requests after %d: median %.1f ms, p95 %.1f ms, p99 %.1f ms, longest %.1f ms%n",
                REQUESTS,
                WARM_UP,
                took_ms[REQUESTS / 2],
                took_ms[REQUESTS * 95 / 100],
                took_ms[REQUESTS * 99 / 100],
                took_ms[REQUESTS - 1]);
    }

    private static String encoded(Map<String, String> form) {
        return form.entrySet().stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** What a browser would send from the page as it stands. */
    private static final class Fields {
        static Map<String, String> of(String html) {
            Map<String, String> form = new HashMap<>();
            Jsoup.parse(html)
                    .select("form.benchform input[name]:not([type=radio]), form.benchform input[type=radio][checked]")
                    .forEach(field -> form.put(field.attr("name"), field.attr("value")));
            form.put(
                    "crown/template_mm",
                    Jsoup.parse(html).select("textarea").get(0).wholeText());
            return form;
        }
    }
}
