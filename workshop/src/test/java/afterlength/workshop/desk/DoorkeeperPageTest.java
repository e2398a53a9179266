package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
