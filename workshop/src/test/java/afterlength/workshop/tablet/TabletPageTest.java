package afterlength.workshop.tablet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509ExtendedTrustManager;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Over real TLS: a stranger sees the pairing page alone, a code pairs one tablet, and who is shut out stays out. */
class TabletPageTest {
    @TempDir
    Path folder;

    private final MovingClock clock = new MovingClock(Instant.parse("2026-11-28T12:00:00Z"));
    private @Nullable TabletDoor opened;
    private @Nullable OpenedDesk shown;

    @BeforeEach
    void aShopWithItsDoorOpen() {
        ShopFolder shop = ShopFolder.open(folder);
        Ledger ledger = Ledger.open(shop);
        Frames frames = new Frames(new SettingsStore(ledger));
        TabletStore tablets = new TabletStore(ledger);
        TabletDoor door = new TabletDoor(shop, tablets, clock);
        opened = door;
        door.leadTo(List.of(routes -> {
            routes.get("/", context -> context.result("Today"));
            routes.post("/changed", context -> context.result("changed"));
            routes.get("/shelf/tablets", context -> context.result("who is paired"));
        }));
        OpenedDesk desk = OpenedDesk.with(new TabletPages(frames, door, tablets, clock, 0));
        shown = desk;
        assertThat(desk.get("/shelf/tablets").words()).contains("no other machine reaches this shop");
        desk.post("/shelf/tablets/open");
    }

    @AfterEach
    void shut() {
        door().close();
        desk().close();
    }

    private TabletDoor door() {
        return Objects.requireNonNull(opened, "door");
    }

    private OpenedDesk desk() {
        return Objects.requireNonNull(shown, "desk");
    }

    @Test
    void aStrangerSeesThePairingPageAndNothingElse() throws Exception {
        HttpResponse<String> today = get("/", "");
        assertThat(today.statusCode()).isEqualTo(302);
        assertThat(today.headers().firstValue("Location").orElse("")).endsWith("/pair");
        assertThat(get("/", "tablet=made-up").statusCode()).isEqualTo(302);
        assertThat(post("/changed", "", "a=b").body()).doesNotContain("changed");
        assertThat(get("/pair", "").body()).contains("Pair this tablet").doesNotContain("Today</p>");
    }

    @Test
    void theCodeOfTheScreenPairsOneTabletAndIsUsedUp() throws Exception {
        String code = code();
        HttpResponse<String> paired = post("/pair", "", "name=At+the+bench&code=" + code);
        assertThat(paired.statusCode()).isEqualTo(302);
        String cookie = cookie(paired);
        assertThat(paired.headers().firstValue("Set-Cookie").orElse(""))
                .contains("Secure", "HttpOnly", "SameSite=Strict");
        assertThat(get("/", cookie).body()).isEqualTo("Today");
        assertThat(get("/shelf/tablets", cookie).statusCode()).isEqualTo(403);
        assertThat(post("/pair", "", "name=Second&code=" + code).statusCode()).isEqualTo(422);
        assertThat(desk().get("/shelf/tablets").words()).contains("At the bench");
    }

    @Test
    void whoIsShutOutStaysOut() throws Exception {
        String cookie = cookie(post("/pair", "", "name=Lost&code=" + code()));
        desk().post("/shelf/tablets/1/shut-out");
        assertThat(get("/", cookie).statusCode()).isEqualTo(302);
    }

    @Test
    void theCodeIsGoodForTenMinutesAndFiveGuesses() throws Exception {
        String code = code();
        clock.forward(601);
        assertThat(post("/pair", "", "name=Late&code=" + code).statusCode()).isEqualTo(422);
        desk().post("/shelf/tablets/open");
        String fresh = code();
        for (int guess = 0; guess < 5; guess++) {
            post("/pair", "", "name=Guess&code=0000000" + guess);
        }
        assertThat(post("/pair", "", "name=Guess&code=" + fresh).statusCode()).isEqualTo(422);
    }

    @Test
    void afterTwentyWrongGuessesEvenTheRightCodeWaits() throws Exception {
        for (int guess = 0; guess < 20; guess++) {
            post("/pair", "", "name=Guess&code=1");
        }
        desk().post("/shelf/tablets/open");
        assertThat(post("/pair", "", "name=Guess&code=" + code()).body()).contains("Too many codes were tried");
        clock.forward(901);
        desk().post("/shelf/tablets/open");
        assertThat(post("/pair", "", "name=Guess&code=" + code()).statusCode()).isEqualTo(302);
    }

    @Test
    void theDatabaseDoesNotHoldWhatATabletShows() throws Exception {
        String secret = cookie(post("/pair", "", "name=T&code=" + code())).substring("tablet=".length());
        door().close();
        assertThat(Files.readAllBytes(folder.resolve("shop.db"))).asString().doesNotContain(secret);
    }

    @Test
    void theKeyIsReadableToItsOwnerAloneAndItsFingerprintStandsOnThePage() throws Exception {
        Path key = folder.resolve("tablet-key.p12");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
                .isEqualTo("rw-------");
        assertThat(desk().get("/shelf/tablets").words(".fingerprint")).isEqualTo(door().fingerprint());
    }

    @Test
    void theDoorIsShutAgain() throws Exception {
        URI address = at("/pair");
        desk().post("/shelf/tablets/shut");
        assertThatThrownBy(() ->
                        client().send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString()))
                .isInstanceOf(IOException.class);
    }

    private String code() {
        return desk().get("/shelf/tablets").words("strong.figure").replace(" ", "");
    }

    private static String cookie(HttpResponse<String> paired) {
        return paired.headers().firstValue("Set-Cookie").orElse("").replaceFirst(";.*", "");
    }

    private URI at(String path) {
        return URI.create("https://127.0.0.1:" + door().port() + path);
    }

    private HttpResponse<String> get(String path, String cookie) throws Exception {
        return client().send(
                        HttpRequest.newBuilder(at(path))
                                .header("Cookie", "x=y; " + cookie)
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String cookie, String form) throws Exception {
        return client().send(
                        HttpRequest.newBuilder(at(path))
                                .header("Cookie", "x=y; " + cookie)
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString(form))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    /** As a person does who went on after comparing the fingerprint. */
    private static HttpClient client() throws GeneralSecurityException {
        SSLContext tls = SSLContext.getInstance("TLS");
        tls.init(null, new TrustManager[] {new Trusting()}, new SecureRandom());
        return HttpClient.newBuilder().sslContext(tls).build();
    }

    private static final class Trusting extends X509ExtendedTrustManager {
        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, java.net.Socket socket) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, java.net.Socket socket) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, SSLEngine engine) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, SSLEngine engine) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind) {}

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return new X509Certificate[0];
        }
    }

    private static final class MovingClock extends Clock {
        private Instant now;

        MovingClock(Instant now) {
            this.now = now;
        }

        void forward(long seconds) {
            now = now.plusSeconds(seconds);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public java.time.ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }
    }
}
