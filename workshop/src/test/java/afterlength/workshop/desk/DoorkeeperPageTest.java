package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests written by hand, because a well-behaved client would not send these. */
class DoorkeeperPageTest {
    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = Desk.open(0, List.of(routes -> {
            routes.get("/looked", context -> context.result("the page itself"));
            routes.post("/changed", context -> context.result("changed"));
            routes.post("/read", context -> context.result("read " + context.formParam("a")));
        }));
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "localhost:4170", "[::1]:80"})
    void ourOwnNamesAreLetIn(String host) throws IOException {
        assertThat(ask("GET", "/looked", "Host: " + host))
                .startsWith("HTTP/1.1 200")
                .endsWith("the page itself");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "127.0.0.1.evil.example",
                "localhost.evil.example:80",
                "192.168.1.4",
                "bad_name@localhost.example"
            })
    void aForeignNameForThisMachineIsTurnedAway(String host) throws IOException {
        assertThat(ask("GET", "/looked", "Host: " + host))
                .startsWith("HTTP/1.1 40")
                .doesNotContain("the page itself");
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "null", "https://127.0.0.1", "http://localhost:1"})
    void aChangeFromAForeignPageIsTurnedAway(String origin) throws IOException {
        assertThat(ask("POST", "/changed", "Host: 127.0.0.1", "Origin: " + origin, "Content-Length: 0"))
                .startsWith("HTTP/1.1 403")
                .doesNotEndWith("changed");
    }

    @Test
    void aChangeFromOurOwnPageIsTaken() throws IOException {
        assertThat(ask("POST", "/changed", "Host: 127.0.0.1", "Origin: http://127.0.0.1", "Content-Length: 0"))
                .startsWith("HTTP/1.1 200")
                .endsWith("changed");
    }

    @Test
    void aChangeThatTheBrowserCallsForeignIsTurnedAway() throws IOException {
        assertThat(ask("POST", "/changed", "Host: 127.0.0.1", "Sec-Fetch-Site: cross-site", "Content-Length: 0"))
                .startsWith("HTTP/1.1 403")
                .doesNotEndWith("changed");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/files/../../../../../../etc/passwd",
                "/files/..%2f..%2f..%2f..%2fetc/passwd",
                "/files/%2e%2e/%2e%2e/%2e%2e/etc/passwd",
                "/files/..%5c..%5cetc%5cpasswd",
                "/fonts/..;/..;/ledger/migrations/V1__the_shop.sql",
                "/files//etc/passwd",
                "/files/%00",
                "//etc/passwd"
            })
    void noPathLeadsOutOfTheHouse(String path) throws IOException {
        assertThat(ask("GET", path, "Host: 127.0.0.1"))
                .startsWith("HTTP/1.1 4")
                .doesNotContain("root:")
                .doesNotContain("CREATE TABLE");
    }

    @Test
    void aGigabyteIsRefusedByItsAnnouncementAndNotWaitedFor() throws IOException {
        try (Socket socket = begun("Content-Type: multipart/form-data; boundary=x", "Content-Length: 1000000000")) {
            byte[] answer = socket.getInputStream().readNBytes(12);
            assertThat(new String(answer, StandardCharsets.UTF_8)).isEqualTo("HTTP/1.1 413");
        }
    }

    @Test
    void aFormOfMoreThanAMegabyteIsRefused() throws IOException {
        try (Socket socket = begun("Content-Type: application/x-www-form-urlencoded", "Content-Length: 1000001")) {
            byte[] answer = socket.getInputStream().readNBytes(12);
            assertThat(new String(answer, StandardCharsets.UTF_8)).isEqualTo("HTTP/1.1 413");
        }
    }

    @Test
    void whatDoesNotSayHowLongItIsIsRefused() throws IOException {
        try (Socket socket = begun("Content-Type: multipart/form-data; boundary=x", "Transfer-Encoding: chunked")) {
            byte[] answer = socket.getInputStream().readNBytes(12);
            assertThat(new String(answer, StandardCharsets.UTF_8)).isEqualTo("HTTP/1.1 411");
        }
    }

    /** Three hundred callers that begin a form and send no more: the others are still answered. */
    @Test
    void slowCallersKeepNobodyOut() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int n = 0; n < 300; n++) {
                slow.add(begun("Content-Type: application/x-www-form-urlencoded", "Content-Length: 5000"));
            }
            assertThat(ask("GET", "/looked", "Host: 127.0.0.1")).startsWith("HTTP/1.1 200");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    @Test
    void aBrokenUploadIsRefusedInWordsAndEndsItsConnection() throws IOException {
        String body = "\r\n--B\r\nContent-Disposition: form-data; name=\"a\"; filename=\"\0\"\r\n\r\nx\r\n--B--\r\n";
        try (Socket socket =
                begun("Content-Type: multipart/form-data; boundary=B", "Content-Length: " + (2 + body.length()))) {
            socket.getOutputStream().write(body.getBytes(StandardCharsets.ISO_8859_1));
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 400")
                    .contains("Connection: close")
                    .contains("What was sent could not be read");
        }
    }

    /** One letter twice a second would take the better part of an hour. */
    @Test
    void whoTricklesIsCutOff() throws IOException, InterruptedException {
        try (Socket socket = begun("Content-Type: application/x-www-form-urlencoded", "Content-Length: 5000")) {
            int sent = 0;
            while (socket.getInputStream().available() == 0 && sent < 60) {
                socket.getOutputStream().write('x');
                sent++;
                TimeUnit.MILLISECONDS.sleep(500);
            }
            assertThat(sent).isLessThan(60);
            assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 4");
        } catch (SocketException cut) {
            assertThat(cut).hasMessageMatching("(?i).*(broken pipe|reset|closed).*");
        }
    }

    private static Socket begun(String... headers) throws IOException {
        URI address = URI.create(desk.address());
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.setSoTimeout(20_000);
        String request = "POST /read HTTP/1.1\r\nHost: 127.0.0.1\r\n" + String.join("\r\n", headers) + "\r\n\r\na=";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
        return socket;
    }

    @Test
    void everyAnswerTellsTheBrowserTheRules() throws IOException {
        assertThat(ask("GET", "/looked", "Host: 127.0.0.1"))
                .contains("Content-Security-Policy: default-src 'none'; script-src 'self'")
                .contains("X-Content-Type-Options: nosniff")
                .contains("X-Frame-Options: DENY")
                .doesNotContain("unsafe-inline");
    }

    @Test
    void aPageThatIsNotThereSaysSoInWords() throws IOException {
        assertThat(ask("GET", "/nowhere", "Host: 127.0.0.1", "Accept: text/html"))
                .startsWith("HTTP/1.1 404")
                .contains("There is no page at /nowhere.");
    }

    /** A form that asks carries what was typed in its address; the server's own refusal is no page of ours. */
    @Test
    void aLongAddressIsReadToItsEnd() throws IOException {
        assertThat(ask("GET", "/nowhere?words=" + "x".repeat(30_000), "Host: 127.0.0.1", "Accept: text/html"))
                .startsWith("HTTP/1.1 404")
                .contains("There is no page at /nowhere.");
    }

    private static String ask(String method, String path, String... headers) throws IOException {
        URI address = URI.create(desk.address());
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            String request = method + " " + path + " HTTP/1.1\r\n" + String.join("\r\n", headers)
                    + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
