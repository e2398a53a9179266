package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.desk.OpenedDesk.Answer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The search for the card is done at once here, so that every page is asked when it has ended. */
class MarkPageTest {
    private static final String PAGE = "/photographs/1/marks";

    /** 60 mm in the plane of the card, beside it. */
    private static final String LINE = RenderedPicture.at(-10, 20) + "\n" + RenderedPicture.at(-10, 80);

    @TempDir
    Path root;

    private ExaminedShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        desk = OpenedDesk.with(shop.rooms());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void takeRendered() {
        shop.take(RenderedPicture.JPEG, Moment.BEFORE, "front");
    }

    private void takeWithoutCard() {
        shop.take(TestPictures.jpeg(600, 400), Moment.BEFORE, "front");
    }

    private Answer write(String page, String tool, String points, String finding) {
        return desk.postAndFollow(
                page, "tool", tool, "arch", "PLANE", "points", points, "finding", finding, "hand", "M. Muster");
    }

    @Test
    void aPictureWithoutCardSaysWhyAndIsMarkedAllTheSame() {
        takeWithoutCard();
        Answer page = desk.get(PAGE);
        assertThat(page.words("#card p"))
                .isEqualTo(
                        "No millimetres from this picture. No card was found in the picture. Lay a printed body card or pocket card flat and wholly"
                                + " into the picture and take the picture again. Marks can be drawn all the same, without"
                                + " millimetres.");
        Answer kept = write(PAGE, "CRACK", "10 20\n300,5 200", "");
        assertThat(kept.status()).isEqualTo(200);
        assertThat(kept.words(".marks .seen")).isEqualTo("crack line 1");
        assertThat(kept.page().select(".kept polyline").attr("points")).isEqualTo("10,20 300.5,200");
        assertThat(desk.post(PAGE + "/reading", "tool", "CRACK", "points", "10 20\n30 40")
                        .words())
                .isEqualTo("Two points set. No millimetres: no card was found in this picture.");
    }

    @Test
    void theReadingFollowsThePoints() {
        takeRendered();
        assertThat(desk.get(PAGE).words("#card p").replaceFirst("\\d+ corners", "N corners"))
                .startsWith("Pocket card found by N corners; the camera stood 2")
                .contains(" mm above it, tilted by 20°. Marks are measured.")
                .contains(
                        "The check lines of this print were not measured; until they are, every length is uncertain by 1 %"
                                + " for that alone.");
        assertThat(desk.post(PAGE + "/reading", "tool", "CRACK", "points", "").words())
                .isEqualTo("Choose what is marked, then set points along it.");
        assertThat(desk.post(PAGE + "/reading", "tool", "CRACK", "points", "10 20")
                        .words())
                .isEqualTo("One point set; set the next one.");
        assertThat(desk.post(PAGE + "/reading", "tool", "CRACK", "arch", "PLANE", "points", LINE)
                        .words())
                .matches("60\\.0 ± 1\\.6 mm Two points set\\. Of the ±, twice each: setting the mark 0\\.\\d\\d,"
                        + " camera from the card 0\\.\\d\\d, height 0\\.\\d\\d, print 1\\.\\d\\d mm\\.");
    }

    @Test
    void measuredCheckLinesMakeThePlusMinusSmaller() {
        takeRendered();
        desk.get(PAGE);
        desk.post("/photographs/1/card/print", "card", "POCKET", "level_mm", "100", "upright_mm", "100,0");
        assertThat(write(PAGE, "CRACK", LINE, "").words(".marks .seen")).matches("crack line 1: 60\\.0 ± 0\\.7 mm");
    }

    @Test
    void wrongCheckLinesAreSaidBesideTheirFields() {
        takeWithoutCard();
        Answer page = desk.post("/photographs/1/card/print", "card", "POCKET", "level_mm", "80", "upright_mm", "");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-level_mm")).isEqualTo("The level check line is 80; allowed is 90 to 110 mm.");
        assertThat(page.words("#problem-upright_mm"))
                .isEqualTo(
                        "The upright check line is “”, which is not a number. Allowed is 90 to 110 mm, such as 12.5 or 12,5.");
    }

    @Test
    void theSizeIsTakenIntoTheFindingByAClick() {
        takeRendered();
        long finding = shop.findings.add(shop.finding("top", "wing crack", "o"), List.of());
        Answer kept = write(PAGE, "CRACK", LINE, Long.toString(finding));
        String offered = kept.words("form[action=/marks/1/take-over] button");
        assertThat(offered).matches("Take 60\\.0 ± 1\\.6 mm into the finding");
        Answer taken = desk.postAndFollow("/marks/1/take-over");
        assertThat(taken.page().select("form[action=/marks/1/take-over]")).isEmpty();
        Finding now = shop.findings.findNow(finding).orElseThrow();
        assertThat("Take " + FindingEntry.size(now) + " into the finding").isEqualTo(offered);
        assertThat(shop.findings.photographs(1).get(now.id())).containsExactly(1L);
        assertThat(shop.findings.history(finding).earlier())
                .extracting(Finding::sizeMm)
                .containsExactly(42.0);
    }

    @Test
    void aFindingHasSeveralMarksOnSeveralPictures() {
        takeRendered();
        long finding = shop.findings.add(shop.finding("top", "wing crack", "o"), List.of());
        write(PAGE, "CRACK", LINE, Long.toString(finding));
        write("/visits/1/drawings/front", "POINT", "5 100", Long.toString(finding));
        assertThat(shop.marks.listNow(1)).extracting(DrawnMark::findingId).containsExactly(finding, finding);
        assertThat(desk.get("/visits/1/drawings/front").words(".marks .about")).startsWith("wing crack, top");
    }

    @Test
    void everyProblemIsSaidAndWhatWasDrawnIsKept() {
        takeWithoutCard();
        Answer page = desk.post(
                PAGE,
                "tool",
                "CRACK",
                "arch",
                "high",
                "height_mm",
                "400",
                "points",
                "10 20\nabc",
                "finding",
                "7",
                "hand",
                "");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-points"))
                .isEqualTo("Line 2 of the points is “abc”; write two numbers, such as 812.5 604.");
        assertThat(page.words("#problem-arch"))
                .isEqualTo("The height of the mark is “high”; choose one of: unknown, plane, edge, half, top.");
        assertThat(page.words("#problem-height_mm"))
                .isEqualTo("The height over the card is 400; allowed is −150 to 150 mm.");
        assertThat(page.words("#problem-finding"))
                .isEqualTo("This finding was corrected or withdrawn meanwhile. Choose it again.");
        assertThat(page.words("#problem-hand")).isEqualTo("The hand is empty. Write a few words.");
        assertThat(page.page().select("[name=points]").val()).isEqualTo("10 20\nabc");
    }

    @Test
    void pointsAreLookedAtOneByOne() {
        takeWithoutCard();
        assertThat(write(PAGE, "CRACK", "", "").words("#problem-points"))
                .isEqualTo(
                        "There are no points. Tap along what is marked, or write one point a line, such as 812.5 604.");
        assertThat(write(PAGE, "OUTLINE", "1 2\n3 4", "").words("#problem-points"))
                .isEqualTo("The outline has two points; it needs three or more. Set another one.");
        assertThat(write(PAGE, "CRACK", "1 2\n601 4", "").words("#problem-points"))
                .isEqualTo("Point 2, 601 4, lies outside the picture; allowed is 0 to 600 across and 0 to 400 down.");
        assertThat(write(PAGE, "CRACK", "1 2\n".repeat(1001), "").words("#problem-points"))
                .isEqualTo("There are 1001 points; at most 1000 fit. Set them further apart.");
    }

    @Test
    void aMarkIsCorrectedWithdrawnAndBroughtBack() {
        takeWithoutCard();
        write(PAGE, "CRACK", "1 2\n3 4", "");
        assertThat(desk.get(PAGE + "?correct=1").page().select("[name=points]").val())
                .isEqualTo("1 2\n3 4");
        String[] form = {"tool", "SEAM", "arch", "EDGE", "points", "1 2\n3 5", "hand", "h", "replaces", "1"};
        assertThat(desk.postAndFollow(PAGE, form).words(".marks .seen")).isEqualTo("seam or edge 2");
        assertThat(desk.post(PAGE, form).words("#problem-points"))
                .isEqualTo(
                        "Somebody else corrected or withdrew this mark while the page was open. Open the page in a second tab"
                                + " and correct it there; nothing was overwritten.");
        Answer away = desk.postAndFollow("/marks/2/withdraw");
        assertThat(away.words(".undo p")).isEqualTo("Withdrawn: seam or edge 3. The points are kept.");
        assertThat(desk.postAndFollow(away.page().select(".undo").attr("action"))
                        .words(".marks .seen"))
                .isEqualTo("seam or edge 4");
    }

    @Test
    void aDrawingTellsThePlaceAndNoMillimetres() {
        Answer page = desk.get("/visits/1/drawings/scroll");
        assertThat(page.page().select(".marksheet img").attr("alt"))
                .isEqualTo("Line drawing: Viola, about 1905, scroll");
        assertThat(desk.get("/visits/1/drawings/scroll/picture.svg").page().select("svg[width][height]"))
                .hasSize(1);
        assertThat(desk.post("/visits/1/drawings/front/reading", "tool", "POINT", "points", "5 100")
                        .words())
                .isEqualTo("One point set. A drawing tells the place of a finding and no millimetres.");
        assertThat(desk.get("/visits/1/drawings/top").words(".answer"))
                .isEqualTo("There is no drawing top in this shop.");
    }

    @Test
    void marksGoOutAsWebAnnotationsAndPoints() {
        takeRendered();
        write(PAGE, "OUTLINE", LINE + "\n" + RenderedPicture.at(20, 95), "");
        assertThat(desk.get(PAGE + ".jsonld").words())
                .contains("\"type\":\"AnnotationPage\"")
                .contains(" mm², ")
                .contains(" ± ")
                .contains("\"selector\":{\"type\":\"SvgSelector\",\"value\":\"");
        assertThat(desk.get("/marks/1/points.csv").words())
                .startsWith("x_mm,y_mm -")
                .hasLineCount(1);
        assertThat(desk.get("/marks/1/points.json").words())
                .startsWith("{\"mark\":1,\"kind\":\"area\",\"unit\":\"mm\",\"points\":[[-");
    }

    @Test
    void theCardsAreSheetsToPrint() {
        takeWithoutCard();
        Elements form = desk.get("/visits/1/photographs").page().select(".cardsheets");
        List<String> sheets = new ArrayList<>(form.select("button[formaction]").eachAttr("formaction"));
        sheets.add(form.attr("action"));
        assertThat(sheets)
                .hasSize(4)
                .allSatisfy(sheet ->
                        assertThat(desk.get(sheet + "?number=2").status()).isEqualTo(200));
        assertThat(desk.get("/cards/hand/a4.pdf").words(".answer")).isEqualTo("There is no card hand in this shop.");
    }
}
