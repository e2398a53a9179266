package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatShape;
import afterlength.craft.access.KeepOff;
import afterlength.craft.access.Motion;
import afterlength.craft.access.MotionStopped;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.geometry.Point;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

/** The search goes on behind the page; here it is let go on when the test wants it. */
class WaySearchTest {
    private static final List<Point> HOLE = List.of(Point.of(0, 0), Point.of(12, 0), Point.of(12, 60), Point.of(0, 60));
    private static final List<Point> CRACK = List.of(Point.of(26, 5), Point.of(26, 55));

    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final WaySearches searches = new WaySearches(waiting::add);

    private static AccessLook look(Inside inside) {
        AccessStudy study = new AccessStudy(
                0,
                1,
                null,
                AccessStudy.written(HOLE),
                AccessStudy.written(CRACK),
                2.7,
                36,
                9.5,
                9.5,
                1.2,
                CleatShape.SQUARE,
                CleatGrain.DIAGONAL,
                25,
                8,
                null,
                false,
                false,
                0,
                true,
                true,
                AccessChoice.CLEATS,
                "Ines",
                Instant.parse("2026-11-04T10:00:00Z"),
                inside);
        return AccessLook.of(study, (SectionPassage) AccessLook.passage(study, HOLE, null), CRACK, null, List.of());
    }

    @Test
    void oneQuestionIsLookedForOnceAndAnswered() {
        WaySearch search = searches.of(look(Inside.UNTOLD)).orElseThrow();
        assertThat(new WayPart(search).words())
                .isEqualTo("A way in is being looked for: 0 % of the headings were tried.");
        assertThat(searches.of(look(Inside.UNTOLD))).containsSame(search);
        assertThat(waiting).hasSize(1);
        waiting.remove().run();
        assertThat(search.findAnswer().orElseThrow()).isInstanceOf(Motion.class);
        assertThat(searches.find(search.number())).containsSame(search);
    }

    @Test
    void aStoppedSearchSaysSoAndIsNotTakenForAnAnswerNextTime() {
        WaySearch search = searches.of(look(Inside.UNTOLD)).orElseThrow();
        search.cancel();
        waiting.remove().run();
        assertThat(search.findAnswer().orElseThrow()).isInstanceOf(MotionStopped.class);
        assertThat(new WayPart(search).words()).isEqualTo("The search was stopped.");
        WaySearch again = searches.of(look(Inside.UNTOLD)).orElseThrow();
        assertThat(again).isNotSameAs(search);
        waiting.remove().run();
        assertThat(again.findAnswer().orElseThrow()).isInstanceOf(Motion.class);
    }

    /** The plan without anything inside has a cleat at 25 mm; post, bar and lining push it away by more than their margin. */
    @Test
    void cleatsKeepOffWhatStandsInside() {
        Inside inside = new Inside(90, "20 20\n32 20", 6, "26 30", 6, "20 52\n32 52", 3, null, 0);
        assertThat(inside.keepOffs())
                .extracting(KeepOff::kind)
                .containsExactly(KeepOff.Kind.BAR, KeepOff.Kind.POST, KeepOff.Kind.LINING);
        AccessLook look = look(inside);
        for (PlacedCleat cleat : look.row().cleats()) {
            for (KeepOff keep : inside.keepOffs()) {
                assertThat(cleat.outline().edgeDistanceTo_mm(keep.outline()))
                        .isGreaterThanOrEqualTo(Inside.MARGIN_MM - 1e-6);
                assertThat(keep.outline().contains(cleat.centre())).isFalse();
            }
        }
        assertThat(look.row().cleats().size() + look.row().leftOut().size()).isPositive();
    }
}
