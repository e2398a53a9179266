package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.craft.setup.CrossPoint;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.MarkTool;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.TracedMark;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A crown traced on a photograph, taken over into the form. The arc it follows is known: 42 mm of radius, 40 mm wide. */
class SetupTakeTest {
    private static final double RADIUS_MM = 42;
    private static final double HALF_WIDTH_MM = 20;

    /** Drawn on a photograph that lay turned by 30°, with y downwards. */
    private static final TracedMark ARC = mark(
            7,
            MarkTool.SEAM,
            IntStream.rangeClosed(-10, 10)
                    .mapToObj(n -> turned(n * HALF_WIDTH_MM / 10))
                    .toList());

    private static Point turned(double across_mm) {
        double up_mm = up_mm(across_mm);
        double angle = Math.toRadians(30);
        return Point.of(
                300 + across_mm * Math.cos(angle) + up_mm * Math.sin(angle),
                200 + across_mm * Math.sin(angle) - up_mm * Math.cos(angle));
    }

    private static double up_mm(double across_mm) {
        return Math.sqrt(RADIUS_MM * RADIUS_MM - across_mm * across_mm)
                - Math.sqrt(RADIUS_MM * RADIUS_MM - HALF_WIDTH_MM * HALF_WIDTH_MM);
    }

    private static TracedMark mark(long id, MarkTool tool, List<Point> places) {
        Photograph photograph = new Photograph(
                1,
                1,
                "0".repeat(64),
                "image/jpeg",
                4000,
                3000,
                Moment.BEFORE,
                "",
                "",
                Instant.parse("2026-03-02T09:15:00Z"),
                false);
        return new TracedMark(id, tool, photograph, "template", 0, places);
    }

    @Test
    void aTracedCrownBecomesTheOwnTemplate() {
        Typed taken = SetupTake.from(
                Typed.known(Map.of("take", "traced", "traced_crown", "7", "crown", "RADIUS", "projection_mm", "27,4")),
                List.of(ARC));
        assertThat(taken.raw("crown")).isEqualTo(CrownKind.TEMPLATE.name());
        assertThat(taken.raw("projection_mm")).as("what was typed stays").isEqualTo("27,4");
        TemplateText read = TemplateText.read(taken.raw(SetupForm.TEMPLATE));
        assertThat(read.problem()).isNull();
        assertThat(read.points())
                .hasSize(21)
                .allSatisfy(point -> assertThat(point.z_mm()).isCloseTo(up_mm(point.y_mm()), within(0.02)));
        assertThat(read.points().get(0)).isEqualTo(new CrossPoint(-HALF_WIDTH_MM, 0));
    }

    @Test
    void nothingChosenIsSaidAndNothingIsLost() {
        Typed none = SetupTake.from(
                Typed.known(Map.of("take", "traced", SetupForm.TEMPLATE, "-1; 0", "crown", "RADIUS")), List.of(ARC));
        assertThat(none.problem("traced_crown")).contains("No traced line is chosen. Choose one.");
        assertThat(none.raw(SetupForm.TEMPLATE)).isEqualTo("-1; 0");
        assertThat(none.raw("crown")).isEqualTo("RADIUS");
    }

    @Test
    void aMarkThatWentMeanwhileIsSaid() {
        Typed gone = SetupTake.from(Typed.known(Map.of("take", "traced", "traced_crown", "8")), List.of(ARC));
        assertThat(gone.problem("traced_crown").orElse(""))
                .contains("not measured on a photograph of this visit any more");
    }

    @Test
    void onlyALineAlongAnEdgeWithAHeightToItIsACrown() {
        assertThat(ARC.isCrown()).isTrue();
        assertThat(mark(1, MarkTool.CRACK, ARC.places()).isCrown()).isFalse();
        assertThat(mark(1, MarkTool.SEAM, ARC.places().subList(0, 2)).isCrown()).isFalse();
    }
}
