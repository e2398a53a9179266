package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.card.Card;
import afterlength.sight.rendered.RenderedCamera;
import afterlength.workshop.desk.Desk;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented camera is calibrated from five rendered pictures, and used for a later one. */
class CameraPageTest {
    private static final int WIDTH_PX = 2016;
    private static final RenderedCamera CAMERA = new RenderedCamera("Invented Camera", WIDTH_PX, 5);
    private static final RenderedCamera OTHER = new RenderedCamera("Invented Camera", WIDTH_PX, 8);
    private static final List<byte[]> PICTURES = pictures();

    @TempDir
    Path root;

    private final HttpClient browser =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();
    private ExaminedShop shop;
    private Desk desk;

    private static List<byte[]> pictures() {
        List<byte[]> pictures = new ArrayList<>();
        for (RenderedCamera.Stand stand : RenderedCamera.allOver(5)) {
            pictures.add(CAMERA.jpeg(CAMERA.scene(Card.BODY, stand), 11 + pictures.size()));
        }
        return pictures;
    }

    private static byte[] later(RenderedCamera camera) {
        RenderedCamera.Stand stand = new RenderedCamera.Stand(10, 5, 430, 25, 80, 90);
        return camera.jpeg(camera.scene(Card.BODY, stand), 3);
    }

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

    private Document send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return Jsoup.parse(browser.send(request.build(), HttpResponse.BodyHandlers.ofString())
                .body());
    }

    private Document form(String path, String body) throws IOException, InterruptedException {
        return send(at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private Document bring(List<byte[]> files) throws IOException, InterruptedException {
        FileForm form = new FileForm();
        for (int n = 0; n < files.size(); n++) {
            form.file("card" + (n + 1) + ".jpg", files.get(n));
        }
        return send(form.onto(at("/shelf/cameras/pictures")));
    }

    private void measureCheckLines() throws IOException, InterruptedException {
        form("/shelf/cameras/print", "card=BODY&number=1&level_mm=100&upright_mm=100%2C0");
    }

    private Document calibrated() throws IOException, InterruptedException {
        measureCheckLines();
        Document solved = bring(PICTURES);
        String camera = solved.select("[name=camera]").val();
        return form("/shelf/cameras/keep", "camera=" + camera + "&hand=M.+Muster");
    }

    private String lensOf(byte[] picture) throws IOException, InterruptedException {
        Photograph photograph = shop.take(picture, Moment.BEFORE, "front");
        return lineOf(photograph);
    }

    private String lineOf(Photograph photograph) throws IOException, InterruptedException {
        return send(at("/photographs/" + photograph.id() + "/card")).text();
    }

    @Test
    void fivePicturesAreKeptAsACalibrationAndTheListTellsItsWorth() throws Exception {
        Document kept = calibrated();
        assertThat(kept.select("#camera-1 td").eachText().subList(0, 4))
                .containsExactly(
                        "Invented Camera, 5.5 mm (as "
                                + Math.round(CAMERA.notes().focal35_mm()) + " mm), 2016 × 1512 pixels",
                        "2 March 2026",
                        "M. Muster",
                        "5");
        assertThat(kept.select("#brought").isEmpty()).isTrue();
        CalibratedCamera camera = shop.calibratedCameras.list().get(0);
        double drawn_px = CAMERA.lens().focal_px()
                / (1 - RenderedCamera.FOCAL_MM / camera.lens().usual_mm());
        // Twice the deviation that is counted for what a lens does from one picture to the next.
        assertThat(Math.abs(camera.asLaid().focal_px() / drawn_px - 1)).isLessThan(0.004);
        assertThat(camera.residualPx()).isLessThan(0.3);
        assertThat(camera.pictures()).hasSize(5).allMatch(picture -> picture.corners() >= 60);
    }

    @Test
    void aLaterPictureOfTheCameraIsMeasuredWithItUntilItIsPutAside() throws Exception {
        calibrated();
        Photograph later = shop.take(later(CAMERA), Moment.BEFORE, "front");
        assertThat(lineOf(later))
                .contains("2016 × 1512 pixels: calibrated on 2 March 2026 from five pictures, corners within")
                .contains("what this card shows agrees with it.");
        Document aside = form("/shelf/cameras/1/put-aside", "");
        assertThat(aside.select(".undo p").text()).startsWith("Put aside: Invented Camera");
        assertThat(lineOf(later))
                .contains(
                        "Lens: from this card and the focal length the file notes. This camera (Invented Camera, 5.5 mm");
        form("/shelf/cameras/1/take-back", "");
        assertThat(lineOf(later)).contains("calibrated on 2 March 2026");
    }

    @Test
    void anotherCameraOfTheSameNameIsFoundOutByItsCard() throws Exception {
        calibrated();
        double same = CAMERA.notes().focal35_mm();
        assertThat(OTHER.notes().focal35_mm()).as("both cameras note the same").isEqualTo(same);
        assertThat(lensOf(later(OTHER)))
                .contains("The calibration of this camera was tried and left out.")
                .contains("The calibration of this camera does not fit this picture: the card shows another lens.");
    }

    @Test
    void aFileWithoutTheCamerasNotesIsMeasuredWithoutCalibration() throws Exception {
        calibrated();
        assertThat(lensOf(RenderedPicture.JPEG))
                .contains("Lens: from this card alone. The file does not tell its camera as it took the picture,"
                        + " so that no calibration is looked for.");
    }

    @Test
    void picturesOfAnUnmeasuredPrintGiveNoCalibration() throws Exception {
        Document brought = bring(PICTURES);
        assertThat(brought.select("#gathered .answer").text())
                .isEqualTo(
                        "Not yet. The check lines of the card in these pictures were not measured. Measure both with a steel"
                                + " rule and keep them; a print that is off across and along by different shares would become a wrong focal"
                                + " length.");
        assertThat(brought.select("[name=hand]").isEmpty()).isTrue();
    }

    @Test
    void whatIsMissingIsToldAndOneMorePictureCompletesIt() throws Exception {
        measureCheckLines();
        Document four = bring(
                List.of(PICTURES.get(0), PICTURES.get(1), PICTURES.get(2), PICTURES.get(3), RenderedPicture.JPEG));
        assertThat(four.select("#gathered .answer").text())
                .isEqualTo(
                        "Not yet. There are 4 pictures of the card; 5 or more are needed: one in the middle and one in each"
                                + " corner.");
        assertThat(four.select("#gathered .caveat").text())
                .isEqualTo(
                        "card5.jpg: of no use. The file does not tell camera and focal length as the camera took it: it was"
                                + " cropped, zoomed, sent through a program that removes its notes, or is no JPEG. Bring the file as the"
                                + " camera made it.");
        Document five = bring(List.of(PICTURES.get(4), PICTURES.get(0)));
        assertThat(five.select("#gathered li")).hasSize(6);
        assertThat(five.select("#gathered .answer").text())
                .startsWith("Solved from five pictures: one lens explains all");
    }

    @Test
    void noFileAndNoHandAreSaidBesideTheirFields() throws Exception {
        Document none = send(new FileForm().file("", new byte[0]).onto(at("/shelf/cameras/pictures")));
        assertThat(none.select("#problem-files").text())
                .isEqualTo("No file was chosen. Choose one or more pictures of a card.");
        measureCheckLines();
        String camera = bring(PICTURES).select("[name=camera]").val();
        Document unnamed = form("/shelf/cameras/keep", "camera=" + camera + "&hand=");
        assertThat(unnamed.select("#problem-hand").text()).isNotEmpty();
        assertThat(shop.calibratedCameras.list()).isEmpty();
    }
}
