package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.picture.PictureFile;
import afterlength.workshop.desk.Desk;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotographPageTest {
    private static final byte[] FRONT = TestPictures.jpeg(600, 400);

    @TempDir
    Path root;

    private final HttpClient browser =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();
    private ExaminedShop shop;
    private Desk desk;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        desk = Desk.open(0, List.of(shop.rooms()));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(desk.address()).resolve(path));
    }

    private HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return browser.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static Document page(HttpResponse<byte[]> response) {
        return Jsoup.parse(new String(response.body(), StandardCharsets.UTF_8));
    }

    private static FileForm before() {
        return new FileForm().field("moment", "BEFORE").field("view", "front").field("caption", "as received");
    }

    @Test
    void aWrongFileKeepsNoneOfTheOthersOut() throws Exception {
        HttpResponse<byte[]> answer = send(before().file("front.jpg", FRONT)
                .file("anna.jpg", TestPictures.of("gif", 10, 10))
                .file("C:\\private\\half.jpg", Arrays.copyOf(FRONT, FRONT.length / 2))
                .file("inside.png", TestPictures.of("png", 30, 70))
                .file("again.jpg", FRONT)
                .onto(at("/visits/1/photographs")));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(page(answer).select(".taken li").eachText())
                .containsExactly(
                        "front.jpg: taken in, 600 × 400 pixels.",
                        "anna.jpg: not taken. The file is a GIF picture, whatever its name says. "
                                + "Pictures are taken as JPEG or PNG; open it and save it as JPEG.",
                        "half.jpg: not taken. The file is only a part of a JPEG picture: its end is missing. "
                                + "Copy it from the camera again.",
                        "inside.png: taken in, 30 × 70 pixels.",
                        "again.jpg: here already as front, before work; nothing was added.");
        assertThat(page(answer).select(".answer").text()).isEqualTo("Two pictures of this visit.");
        assertThat(shop.photographs.list(1)).extracting(Photograph::caption).containsOnly("as received");
    }

    @Test
    void aFileAboveTheLimitIsRefusedAndTheOthersAreTaken() throws Exception {
        byte[] large = Arrays.copyOf(FRONT, (int) PictureFile.LARGEST_BYTES + 5_000_000);
        HttpResponse<byte[]> answer =
                send(before().file("large.jpg", large).file("front.jpg", FRONT).onto(at("/visits/1/photographs")));
        assertThat(page(answer).select(".taken li").eachText())
                .containsExactly(
                        "large.jpg: not taken. The file has more than 60 MB; save it as JPEG with fewer pixels.",
                        "front.jpg: taken in, 600 × 400 pixels.");
    }

    @Test
    void noFileChosenIsSaidBesideTheField() throws Exception {
        HttpResponse<byte[]> answer = send(before().file("", new byte[0]).onto(at("/visits/1/photographs")));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(page(answer).select("#problem-files").text())
                .isEqualTo("No file was chosen. Choose one or more pictures.");
        assertThat(page(answer).select("[name=view]").val()).isEqualTo("front");
    }

    @Test
    void aPictureIsKeptByTheBrowserOnlyUnderTheDigitsOfItsFile() throws Exception {
        Photograph photograph = shop.take(FRONT, Moment.BEFORE, "front");
        HttpResponse<byte[]> named = send(at(photograph.address()));
        assertThat(named.body()).isEqualTo(FRONT);
        assertThat(named.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(named.headers().firstValue("Content-Length")).contains(Integer.toString(FRONT.length));
        assertThat(named.headers().firstValue("Cache-Control")).contains("private, max-age=31536000, immutable");
        assertThat(named.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        HttpResponse<byte[]> bare = send(at("/photographs/1/small"));
        assertThat(bare.headers().firstValue("Cache-Control")).contains("no-cache");
        String mark = bare.headers().firstValue("ETag").orElseThrow();
        assertThat(mark).isEqualTo("\"" + photograph.sha256() + "-small\"");
        HttpResponse<byte[]> asked = send(at("/photographs/1/small").header("If-None-Match", mark));
        assertThat(asked.statusCode()).isEqualTo(304);
        assertThat(asked.body()).isEmpty();
    }

    @Test
    void aMissingFileIsNotKeptByTheBrowser() throws Exception {
        Photograph photograph = shop.take(FRONT, Moment.BEFORE, "front");
        Files.delete(root.resolve("photographs").resolve(photograph.sha256()));
        HttpResponse<byte[]> answer = send(at(photograph.address()));
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Cache-Control")).isEmpty();
        assertThat(page(answer).select(".answer").text())
                .isEqualTo("There is no file of the photograph " + photograph.sha256() + " in this shop.");
    }

    @Test
    void puttingAwayCanBeUndone() throws Exception {
        shop.take(FRONT, Moment.BEFORE, "front");
        HttpResponse<byte[]> away = send(at("/photographs/1/put-away").POST(HttpRequest.BodyPublishers.noBody()));
        assertThat(page(away).select(".undo p").text()).isEqualTo("Put away: front, before work. Nothing is lost.");
        String undo = page(away).select(".undo").attr("action");
        HttpResponse<byte[]> back = send(at(undo).POST(HttpRequest.BodyPublishers.noBody()));
        assertThat(page(back).select(".answer").text()).isEqualTo("One picture of this visit.");
    }

    @Test
    void wordsOfAPictureCanBeChanged() throws Exception {
        shop.take(FRONT, Moment.BEFORE, "front");
        HttpResponse<byte[]> answer = send(at("/photographs/1/words")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("moment=AFTER&view=%3Cscroll%3E&caption=x")));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(page(answer).select("figcaption").text()).isEqualTo("<scroll>: x");
        assertThat(shop.photographs.get(1).moment()).isEqualTo(Moment.AFTER);
    }
}
