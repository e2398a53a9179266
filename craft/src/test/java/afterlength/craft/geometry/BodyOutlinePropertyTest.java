package afterlength.craft.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be true of any body we draw, on the four usual sizes and on forty drawn by lot. */
class BodyOutlinePropertyTest {
    private static final long SEED = 20260301;
    /** What was asked of the drawing; sampling at a millimetre misses a widest point by far less. */
    private static final Offset<Double> ASKED = within(0.1);

    static Stream<BodyShape> bodies() {
        SplittableRandom random = new SplittableRandom(SEED);
        Stream<BodyShape> usual = Stream.of(
                        InstrumentShape.violin(),
                        InstrumentShape.viola(),
                        InstrumentShape.cello(),
                        InstrumentShape.bass(),
                        InstrumentShape.violin().withBodyLength(255))
                .map(InstrumentShape::body);
        return Stream.concat(usual, Stream.generate(() -> drawnByLot(random)).limit(40));
    }

    private static BodyShape drawnByLot(SplittableRandom random) {
        double length_mm = random.nextDouble(200, 1200);
        double upper_mm = length_mm * random.nextDouble(0.45, 0.50);
        double lower_mm = length_mm * random.nextDouble(0.56, 0.61);
        return BodyShape.of(length_mm, upper_mm, upper_mm * random.nextDouble(0.64, 0.72), lower_mm, length_mm * 0.55);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void hasTheLengthAndWidthsAskedFor(BodyShape body) {
        Outline edge = BodyOutline.of(body).outline(1);
        assertThat(edge.length_mm()).isCloseTo(body.length_mm(), ASKED);
        assertThat(edge.width_mm()).isCloseTo(body.lowerWidth_mm(), ASKED);
        assertThat(widths(edge, 0, 0.28 * body.length_mm()).max().orElseThrow()).isCloseTo(body.upperWidth_mm(), ASKED);
        double upper_mm = body.upperCorner().y_mm() + body.cornerWidth_mm();
        double lower_mm = body.lowerCorner().y_mm() - body.cornerWidth_mm();
        assertThat(widths(edge, upper_mm, lower_mm).min().orElseThrow()).isCloseTo(body.middleWidth_mm(), ASKED);
    }

    private static DoubleStream widths(Outline edge, double from_mm, double to_mm) {
        DoubleUnaryOperator level = i -> from_mm + (to_mm - from_mm) * i / 400;
        return DoubleStream.iterate(0, i -> i <= 400, i -> i + 1).map(level).map(edge::widthAt_mm);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void isOneLineThatNeverCrossesItself(BodyShape body) {
        assertThat(BodyOutline.of(body).outline(1).isSimple()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void isEqualOnBothSides(BodyShape body) {
        Outline edge = BodyOutline.of(body).outline(1);
        Outline otherSide = BodyOutline.of(body).mirrored().reversed().outline(1);
        // Mirrored numbers are exact; only the curve's parameter runs the other way.
        edge.points()
                .forEach(point -> assertThat(otherSide.points().stream()
                                .mapToDouble(point::distanceTo_mm)
                                .min()
                                .orElseThrow())
                        .isLessThan(1e-9));
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void purflingRunsInsideAtItsDistance(BodyShape body) {
        Outline edge = BodyOutline.of(body).outline(1);
        double distance_mm = body.length_mm() * 4 / 355;
        Outline purfling = edge.inset(distance_mm);
        assertThat(edge.contains(purfling)).isTrue();
        assertThat(purfling.isSimple()).isTrue();
        assertThat(edge.edgeDistanceTo_mm(purfling)).isCloseTo(distance_mm, ASKED);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void purflingSoFarInThatTheFigureFallsApartIsRefused(BodyShape body) {
        Outline edge = BodyOutline.of(body).outline(1);
        assertThatThrownBy(() -> edge.inset(body.length_mm()))
                .hasMessage("inset " + body.length_mm() + " mm leaves no single figure of an outline "
                        + Math.round(body.lowerWidth_mm()) + " mm wide; give a smaller distance");
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void waistWiderThanTheUpperBoutIsRefused(BodyShape body) {
        double upper_mm = body.upperWidth_mm();
        assertThatThrownBy(
                        () -> BodyShape.of(body.length_mm(), upper_mm, upper_mm, body.lowerWidth_mm(), body.stop_mm()))
                .hasMessage("middle width %.1f mm does not make a body; give %.1f to %.1f mm"
                        .formatted(upper_mm, upper_mm * 0.4, upper_mm * 0.85));
    }
}
