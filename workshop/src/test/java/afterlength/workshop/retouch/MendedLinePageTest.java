package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.examination.Moment;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From two photographs to what a page says of the line in both. */
class MendedLinePageTest {
    @TempDir
    Path folder;

    private RetouchShop shop;
    private OpenedDesk desk;
    private String page;

    @BeforeEach
    void open() {
        shop = new RetouchShop(folder);
        desk = shop.open();
        page = "/visits/" + shop.visit.id() + "/mended-lines";
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private DrawnMark plain(double darker, double grain, Moment moment) throws IOException {
        return shop.marked(LinedPicture.plain(darker, grain), moment, LinedPicture.FROM, LinedPicture.TO);
    }

    private OpenedDesk.Answer read(DrawnMark before, DrawnMark after, String length, String... more) {
        String[] form = {
            "place",
            "crack at the eye",
            "length_mm",
            length,
            "before",
            "" + before.id(),
            "after",
            "" + after.id(),
            "hand",
            "bench"
        };
        String[] all = java.util.stream.Stream.concat(java.util.Arrays.stream(form), java.util.Arrays.stream(more))
                .toArray(String[]::new);
        return desk.postAndFollow(page, all);
    }

    @Test
    void aLineIsReadBeforeAndAfterByItsLength() throws IOException {
        OpenedDesk.Answer answer = read(plain(20, 0.3, Moment.BEFORE), plain(1.5, 0.3, Moment.AFTER), "40");
        assertThat(answer.words("h1")).isEqualTo("crack at the eye");
        assertThat(answer.words(".answer"))
                .matches(
                        "From ΔE00 1[0-9]\\.\\d ± \\d\\.\\d, visible, to (0\\.[89]|1\\.[0-3]) ± \\d\\.\\d, found by who searches"
                                + ".*, seen from 40 cm\\.");
        assertThat(answer.words(".limits"))
                .contains(
                        "No card in the picture", "Gloss steps and relief are not seen this way", "half a millimetre");
        assertThat(answer.page().select(".linesight")).hasSize(2);
        assertThat(answer.page().select(".linesight").eq(0).select(".untouched"))
                .hasSize(6);
        assertThat(answer.page().select(".chart svg title").text()).contains("Across the line");
        assertThat(answer.words("table")).contains("12.0");
    }

    @Test
    void anUntouchedPlaceReadsBelowItsControl() throws IOException {
        OpenedDesk.Answer answer = read(plain(20, 3, Moment.BEFORE), plain(0, 3, Moment.AFTER), "40");
        assertThat(answer.words(".answer")).contains("not found at this distance by who does not know it");
        MendedLine line = shop.lines.listNow(shop.visit.id()).get(0);
        assertThat(line.after().high()).isLessThanOrEqualTo(line.after().control());
    }

    @Test
    void theMillimetresComeFromTheCardWhereThereIsOne() throws IOException {
        DrawnMark before = shop.marked(
                LinedPicture.withCard(10), Moment.BEFORE, LinedPicture.onCard(90, 20), LinedPicture.onCard(90, 60));
        DrawnMark after = shop.marked(
                LinedPicture.withCard(60), Moment.AFTER, LinedPicture.onCard(90, 20), LinedPicture.onCard(90, 60));
        OpenedDesk.Answer answer = read(before, after, "");
        assertThat(answer.words(".answer")).contains("visible");
        MendedLine line = shop.lines.listNow(shop.visit.id()).get(0);
        assertThat(line.before().pixelsPerMm()).isBetween(11.5, 13.5);
        assertThat(line.before().high()).isGreaterThan(line.after().high());
        assertThat(line.before().caveats()).doesNotContain("No card");
    }

    @Test
    void whatCannotBeReadIsSaidBesideItsFieldAndNothingIsLost() throws IOException {
        DrawnMark before = plain(20, 0.3, Moment.BEFORE);
        DrawnMark after = plain(2, 0.3, Moment.AFTER);
        OpenedDesk.Answer noLength = read(before, after, "");
        assertThat(noLength.status()).isEqualTo(422);
        assertThat(noLength.words("#problem-before"))
                .isEqualTo(
                        "No card was found in this picture. Type the length of the line below, such as 42, or take one with a"
                                + " card.");
        assertThat(noLength.page().select("#f-place").val()).isEqualTo("crack at the eye");
        assertThat(noLength.page().select("#f-after option[selected]").val()).isEqualTo("" + after.id());
        assertThat(read(before, after, "80").words("#problem-before"))
                .isEqualTo(
                        "This picture has 6.0 pixels to the millimetre at the line; 10 or more are needed. Take it from nearer.");
        assertThat(read(before, before, "40").words("#problem-after"))
                .isEqualTo("Both are the same mark; choose the mark on a photograph taken after the work.");
        assertThat(shop.lines.listNow(shop.visit.id())).isEmpty();
    }

    @Test
    void anUntouchedPlaceMarkedByHandIsComparedWith() throws IOException {
        DrawnMark before = plain(20, 0.3, Moment.BEFORE);
        DrawnMark after = plain(2, 0.3, Moment.AFTER);
        DrawnMark beside = shop.marked(
                LinedPicture.plain(2, 0.3), Moment.AFTER, LinedPicture.UNTOUCHED_FROM, LinedPicture.UNTOUCHED_TO);
        OpenedDesk.Answer answer = read(before, after, "40", "after_untouched", "" + beside.id());
        assertThat(answer.page().select(".linesight").eq(1).select(".untouched"))
                .hasSize(1);
        assertThat(read(before, after, "40", "before_untouched", "" + beside.id())
                        .words("#problem-before_untouched"))
                .isEqualTo("The untouched place must be marked on the same photograph as the line.");
    }
}
