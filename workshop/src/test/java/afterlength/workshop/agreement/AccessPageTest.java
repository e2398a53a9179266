package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccessPageTest {
    @TempDir
    Path folder;

    private OldViola shop;
    private AccessStore studies;
    private ClampStore clamps;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
        studies = new AccessStore(shop.ledger);
        clamps = new ClampStore(shop.ledger);
        Frames frames = new Frames(shop.settings);
        desk = OpenedDesk.with(
                new ClampPages(frames, clamps),
                new AccessPages(
                        frames,
                        shop.settings,
                        shop.visits,
                        shop.instruments,
                        shop.findingLines,
                        shop.treatments,
                        studies,
                        clamps,
                        new CleatSheets(shop.settings, "Afterlength test"),
                        shop.traced(folder),
                        new WaySearches(Runnable::run),
                        shop.clock));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private String address() {
        return "/visits/" + shop.visit.id() + "/access/" + shop.crack;
    }

    /** A box for a hole, a straight crack beside it, and the changes of a test. */
    private static String[] form(String... changes) {
        Map<String, String> form = new TreeMap<>(Map.of(
                "outline", "0 0\n12 0\n12 60\n0 60",
                "crack", "26 5\n26 55",
                "plate_mm", "2.7",
                "depth_mm", "36",
                "cleat_length_mm", "9.5",
                "cleat_width_mm", "9.5",
                "cleat_thickness_mm", "1.2",
                "shape", "SQUARE",
                "grain", "DIAGONAL",
                "spacing_mm", "25"));
        form.putAll(Map.of("to_ends_mm", "8", "chosen", "CLEATS", "hand", "Ines", "what", "look", "seen", "cleanable"));
        for (int i = 0; i < changes.length; i += 2) {
            form.put(changes[i], changes[i + 1]);
        }
        List<String> pairs = new ArrayList<>();
        form.forEach((name, value) -> pairs.addAll(List.of(name, value)));
        return pairs.toArray(String[]::new);
    }

    @Test
    void aFreshFormHoldsADrawnHoleAndNoAnswer() {
        OpenedDesk.Answer page = desk.get(address());
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("#f-outline").text()).isNotBlank();
        assertThat(page.page().select(".answer")).isEmpty();
    }

    @Test
    void lookingAnswersWithPassageReachCleatsAndAWayIn() {
        OpenedDesk.Answer page = desk.post(address(), form());
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.words(".answer"))
                .isEqualTo("9.5 × 1.2 mm passes the hole, with 5.4 mm of air on every side at its best place.");
        assertThat(page.words())
                .contains(
                        "The far end of the crack lies 14 mm from the edge of the hole, measured in the flat; that is the"
                                + " throat a clamp needs.")
                .contains("3 cleats, together 0.14 g.")
                .contains("A way in to the first cleat's place was found and every pose of it looked at twice.");
        assertThat(page.page().select("svg.drawing")).hasSize(2);
        assertThat(studies.findNow(shop.crack)).isEmpty();
    }

    @Test
    void keepingKeepsAndPutsTheLineIntoTheProposal() {
        desk.post(address(), form("what", "keep", "propose", "yes"));
        AccessStudy first = studies.findNow(shop.crack).orElseThrow();
        assertThat(first.chosen()).isEqualTo(AccessChoice.CLEATS);
        assertThat(shop.treatments.listOf(shop.visit.id()))
                .extracting(Treatment::template)
                .containsExactly("crack-outside", "studs-through-sound-hole");
        OpenedDesk.Answer again = desk.postAndFollow(address(), form("what", "keep", "cleat_thickness_mm", "1,4"));
        assertThat(again.words()).contains("Kept.").contains("9.5 × 1.4 mm passes the hole");
        AccessStudy second = studies.findNow(shop.crack).orElseThrow();
        assertThat(second.replaces()).isEqualTo(first.id());
        assertThat(second.cleatThicknessMm()).isEqualTo(1.4);
    }

    @Test
    void keepingTwiceAddsNoLineTwiceAndKeepsWhatWasWritten() {
        desk.post(address(), form("what", "keep", "propose", "yes"));
        desk.post(address(), form("what", "keep", "propose", "yes"));
        desk.post(address(), form("what", "keep", "propose", "yes", "cleat_thickness_mm", "1,4"));
        List<Treatment> lines = shop.treatments.listOf(shop.visit.id());
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1).reason())
                .containsOnlyOnce("9.5 × 1.2 mm passes the hole")
                .containsOnlyOnce("9.5 × 1.4 mm passes the hole");
    }

    @Test
    void thePlanOfWorkStandsWithItsTimesAndItsCaution() {
        OpenedDesk.Answer page = desk.post(address(), form());
        assertThat(page.words())
                .contains("work glue in, level, clamp: 10 min – 35 min by hand; then left alone for 12 h – 48 h")
                .contains("prepare 3 to 4 studs: 10 min – 30 min by hand")
                .contains("The plate is not pushed from outside to meet the stud.");
        assertThat(desk.post(address(), form("chosen", "UNDECIDED")).words()).doesNotContain("Plan of work");
    }

    @Test
    void reasonsToOpenStandWithTheirFacts() {
        OpenedDesk.Answer page = desk.post(address(), form("seen", "under_post", "step_mm", "0.5"));
        assertThat(page.words())
                .contains("It runs under the post: the post would press on the mended line from within.")
                .contains("Its edges stand 0.5 mm out of level and do not close dry; cleats do not level.")
                .contains("It cannot be cleaned from outside, and glue does not hold on dirt.");
    }

    @Test
    void allProblemsStandBesideTheirFields() {
        OpenedDesk.Answer page =
                desk.post(address(), form("outline", "0 0\nhere\n1 1", "crack", "1 1", "plate_mm", "thin", "hand", ""));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-outline"))
                .isEqualTo("The edge of the hole has “here”, which is no point. Write x and y in millimetres, such as"
                        + " 12.5 30, one point a line.");
        assertThat(page.words("#problem-crack"))
                .isEqualTo("The crack has 1 points; allowed is 2 to 2000. Write one point a line.");
        assertThat(page.words("#problem-plate_mm"))
                .isEqualTo(
                        "The thickness of the plate is “thin”, which is not a number. Allowed is 0.5 to 20 mm, such as"
                                + " 12.5 or 12,5.");
        assertThat(page.words("#problem-hand")).isEqualTo("The hand is empty. Write a few words.");
        assertThat(page.page().select("#f-outline").text()).contains("here");
    }

    @Test
    void anOutlineThatCrossesItselfIsRefusedBesideIt() {
        OpenedDesk.Answer page = desk.post(address(), form("outline", "M 0 0 L 12 60 L 12 0 L 0 60 Z"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-outline"))
                .isEqualTo("The outline crosses or touches itself. Give the points once, in order round the hole.");
    }

    @Test
    void clampsAreWrittenDownChosenAndPutAway() {
        OpenedDesk.Answer refused =
                desk.post("/shelf/clamps", "name", "Long one", "throat_mm", "4", "jaw_length_mm", "10");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.words("#problem-throat_mm"))
                .isEqualTo(
                        "The throat is 4 mm, no longer than half the jaw. Measure from the middle of the jaw to the post.");
        clamps.add(new ShopClamp(0, "Short one", 18, 8, 6, 1.5, 1.5, 3, false));
        long id = clamps.list().get(0).id();
        assertThat(desk.post(address(), form("clamp", Long.toString(id))).words(".answer"))
                .startsWith("9.5 × 2.7 mm passes the hole");
        desk.post("/shelf/clamps/" + id + "/put-away");
        assertThat(clamps.list()).isEmpty();
        assertThat(clamps.find(id)).isPresent();
    }
}
