package afterlength.start;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.instrument.Listing;
import afterlength.workshop.ledger.ShopFolder;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was saved is there although the process was killed the moment after it had answered. */
class KilledProcessFaultTest {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");
    private static final int TIMES = 5;

    @TempDir
    Path shop;

    @Test
    void everyAcknowledgedReceiptSurvivesTheKill() throws IOException, InterruptedException {
        List<String> acknowledged = new ArrayList<>();
        for (int n = 0; n < TIMES; n++) {
            String name = "Viola number " + n;
            receiveAndKill(name);
            acknowledged.add(name);
        }
        House again = House.of(ShopFolder.open(shop), Clock.systemUTC());
        assertThat(again.instruments.find("").stream().map(Listing::name))
                .containsExactlyInAnyOrderElementsOf(acknowledged);
    }

    private void receiveAndKill(String name) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "afterlength.start.Main",
                        "--shop",
                        shop.toString(),
                        "--port",
                        "0",
                        "--no-browser")
                .redirectErrorStream(true)
                .start();
        try (BufferedReader said = program.inputReader(UTF_8)) {
            String form = "owner_name=A+person&kind=VIOLA&reason=To+play&name=" + name.replace(' ', '+');
            HttpRequest save = HttpRequest.newBuilder(URI.create(address(said) + "receive"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(form))
                    .build();
            int status = HttpClient.newHttpClient()
                    .send(save, HttpResponse.BodyHandlers.discarding())
                    .statusCode();
            assertThat(status).isEqualTo(302);
        } finally {
            program.destroyForcibly().waitFor();
        }
    }

    private static String address(BufferedReader said) throws IOException {
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher found = ADDRESS.matcher(line);
            if (found.find()) {
                return found.group();
            }
        }
        throw new IOException("the program ended without saying its address");
    }
}
