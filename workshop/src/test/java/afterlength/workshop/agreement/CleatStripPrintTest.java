package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatShape;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.geometry.Point;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Outline;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The strip is true to size: every cleat on it has the sides that were asked for, and its grain lies along the strip. */
class CleatStripPrintTest {
    private static final List<Point> HOLE = List.of(Point.of(0, 0), Point.of(12, 0), Point.of(12, 60), Point.of(0, 60));
    private static final List<Point> CRACK = List.of(Point.of(26, 5), Point.of(26, 55));

    @Test
    void everyCleatHasItsSides() {
        AccessStudy study = new AccessStudy(
                0,
                1,
                null,
                AccessStudy.written(HOLE),
                AccessStudy.written(CRACK),
                2.7,
                36,
                9.5,
                7,
                1.2,
                CleatShape.SQUARE,
                CleatGrain.CROSSWISE,
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
                Inside.UNTOLD);
        SectionPassage passage = (SectionPassage) AccessLook.passage(study, HOLE, null);
        Drawing strip = CleatStrip.of(AccessLook.of(study, passage, CRACK, null, List.of()));
        List<Outline> cleats = strip.shapes().stream()
                .filter(Outline.class::isInstance)
                .map(Outline.class::cast)
                .toList();
        assertThat(cleats).hasSize(3);
        cleats.forEach(cleat -> {
            assertThat(cleat.points().get(0).distanceTo_mm(cleat.points().get(1)))
                    .isCloseTo(9.5, within(1e-9));
            assertThat(cleat.points().get(1).distanceTo_mm(cleat.points().get(2)))
                    .isCloseTo(7, within(1e-9));
        });
    }
}
