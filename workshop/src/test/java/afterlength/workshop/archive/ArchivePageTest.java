package afterlength.workshop.archive;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.ledger.SettingsStore;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Making, fetching and reading archives on the shelf, over real HTTP. */
class ArchivePageTest {
    @TempDir
    Path root;

    private final HttpClient client = HttpClient.newHttpClient();
    private OpenedDesk desk;
    private SmallShop shop;

    @BeforeEach
    void open() throws Exception {
        shop = new SmallShop(root.resolve("shop"));
        desk = OpenedDesk.with(new ArchivePages(
                new Frames(new SettingsStore(shop.ledger)),
                shop.folder,
                new InstrumentStore(shop.ledger),
                new OwnerStore(shop.ledger),
                shop.maker()));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private byte[] made(String what) throws Exception {
        desk.post("/shelf/archive/make", "what", what);
        for (int n = 0; n < 300; n++) {
            if (desk.get("/shelf/archive/progress").words().startsWith("The archive is ready")) {
                return client.send(
                                HttpRequest.newBuilder(desk.at("/shelf/archive/made"))
                                        .build(),
                                HttpResponse.BodyHandlers.ofByteArray())
                        .body();
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        throw new AssertionError(desk.get("/shelf/archive/progress").words());
    }

    @Test
    void anArchiveIsMadeFetchedAndReadIntoANewFolder() throws Exception {
        byte[] archive = made("shop");
        assertThat(desk.get("/shelf/archive").lines("#f-what option"))
                .contains(
                        "the whole shop, for the shop",
                        "everything kept about Clementine Vantongeren, for that person");
        HttpResponse<String> answer = bring(archive, "copy");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(Jsoup.parse(answer.body()).select("[role=status]").text())
                .contains("The archive was checked and read.");
        assertThat(WholeShop.rows(root.resolve("copy"))).isEqualTo(WholeShop.rows(root.resolve("shop")));
    }

    @Test
    void aLongListIsCutAndTheOthersAreLookedFor() {
        assertThat(desk.get("/shelf/archive").lines("label[for=f-find]")).isEmpty();
        shop.ledger.change(handle -> {
            for (int n = 0; n < ArchiveChoices.MOST; n++) {
                handle.execute(
                        "INSERT INTO owner (name, email, phone, address, remark) VALUES (?, '', '', '', '')",
                        "Aaltje Ödegård " + n);
            }
        });
        OpenedDesk.Answer cut = desk.get("/shelf/archive");
        assertThat(cut.lines("label[for=f-find]")).containsExactly("Look for an instrument or a person");
        assertThat(cut.lines("#f-what option")).hasSize(1 + 2 + ArchiveChoices.MOST);
        assertThat(desk.get("/shelf/archive?find=vantong").lines("#f-what option"))
                .containsExactly(
                        "the whole shop, for the shop",
                        "the instrument “Viola” of Clementine Vantongeren, for its owner",
                        "everything kept about Clementine Vantongeren, for that person");
        assertThat(desk.get("/shelf/archive?find=%C3%B6degard").lines("#f-what option"))
                .hasSize(1);
        assertThat(desk.get("/shelf/archive?find=%C3%B6deg%C3%A5rd+7").lines("#f-what option"))
                .contains("everything kept about Aaltje Ödegård 7, for that person");
        assertThat(desk.get("/shelf/archive?what=owner-2")
                        .page()
                        .select("#f-what option[selected]")
                        .text())
                .isEqualTo("everything kept about Balthasar Quirrenbach, for that person");
    }

    @Test
    void aSpoiltArchiveIsRefusedOnThePage() throws Exception {
        byte[] archive = made("owner-2");
        archive[archive.length / 2] ^= 0x55;
        HttpResponse<String> answer = bring(archive, "copy");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("#problem-archive").text()).endsWith("Nothing was kept of it.");
        assertThat(Jsoup.parse(answer.body()).select("#f-folder").attr("value")).isEqualTo("copy");
        assertThat(root.resolve("copy")).doesNotExist();
    }

    @Test
    void theFolderStaysBesideTheShop() throws Exception {
        for (String name : new String[] {"../elsewhere", "/tmp/x", "", "a/b", "..\\c"}) {
            HttpResponse<String> answer = bring(new byte[] {1}, name);
            assertThat(Jsoup.parse(answer.body()).select("#problem-folder").text())
                    .as(name)
                    .startsWith("The name of the folder is “" + name + "”");
        }
        assertThat(Jsoup.parse(bring(new byte[] {1}, "shop").body())
                        .select("#problem-archive")
                        .text())
                .contains("is not empty. An archive is read into an empty folder only");
        try (var files = Files.list(root)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void whatIsNotThereIsNotArchived() {
        assertThat(desk.post("/shelf/archive/make", "what", "instrument-77").status())
                .isEqualTo(404);
        assertThat(desk.post("/shelf/archive/make", "what", "setting-1").status())
                .isEqualTo(404);
        assertThat(desk.get("/shelf/archive/made").status()).isEqualTo(404);
    }

    private HttpResponse<String> bring(byte[] archive, String folder) throws Exception {
        String edge = "-edge-7f3a";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(
                utf8("--" + edge + "\r\nContent-Disposition: form-data; name=\"folder\"\r\n\r\n" + folder + "\r\n"));
        body.writeBytes(
                utf8(
                        "--" + edge
                                + "\r\nContent-Disposition: form-data; name=\"archive\"; filename=\"a.zip\"\r\nContent-Type: application/zip\r\n\r\n"));
        body.writeBytes(archive);
        body.writeBytes(utf8("\r\n--" + edge + "--\r\n"));
        URI place = desk.at("/shelf/archive/read");
        return client.send(
                HttpRequest.newBuilder(place)
                        .header("Content-Type", "multipart/form-data; boundary=" + edge)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
