package afterlength.craft.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a maker would check on the drawing with a rule: holes, bridge, board, tailpiece and head stand where they belong. */
class FittingsPropertyTest {
    static Stream<InstrumentShape> instruments() {
        return Stream.of(
                InstrumentShape.violin(),
                InstrumentShape.viola(),
                InstrumentShape.cello(),
                InstrumentShape.bass(),
                InstrumentShape.violin().withBodyLength(335));
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void soundHoleHasItsLengthAndEyeDistanceAndLiesInsideThePurfling(InstrumentShape instrument) {
        Outline hole = SoundHole.treble(instrument).outline(0.2);
        assertThat(hole.isSimple()).isTrue();
        assertThat(hole.length_mm()).isCloseTo(instrument.fittings().soundHole_mm(), within(0.1));
        double innerEdge_mm =
                hole.points().stream().mapToDouble(Point::x_mm).min().orElseThrow();
        assertThat(2 * innerEdge_mm).isCloseTo(instrument.fittings().eyeDistance_mm(), within(0.1));
        Outline edge = BodyOutline.of(instrument.body()).outline(1);
        assertThat(edge.inset(8 * instrument.stoutness()).contains(hole)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void bridgeStandsOnTheStopBetweenTheNotches(InstrumentShape instrument) {
        Outline bridge = BridgeAbove.of(instrument).outline(1);
        Outline hole = SoundHole.treble(instrument).outline(0.2);
        double stop_mm = instrument.body().stop_mm();
        assertThat(bridge.contains(Point.of(0, stop_mm))).isTrue();
        double notch_mm = SoundHole.treble(instrument).parts().stream()
                .map(Cubic::from)
                .filter(point -> Math.abs(point.y_mm() - stop_mm) < 1e-9)
                .mapToDouble(Point::x_mm)
                .min()
                .orElseThrow();
        assertThat(notch_mm).isGreaterThan(instrument.fittings().bridgeWidth_mm() / 2);
        assertThat(bridge.edgeDistanceTo_mm(hole)).isGreaterThan(3 * instrument.stoutness());
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void tailpieceStaysOnTheBodyAndBelowTheBridge(InstrumentShape instrument) {
        Outline tailpiece = Tailpiece.of(instrument).outline(1);
        assertThat(BodyOutline.of(instrument.body()).outline(1).contains(tailpiece))
                .isTrue();
        assertThat(Tailpiece.fret_mm(instrument) - instrument.body().stop_mm())
                .isEqualTo(instrument.fittings().afterLength_mm(), within(1e-9));
        assertThat(tailpiece.isSimple()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void everyClosedPartIsASimpleFigure(InstrumentShape instrument) {
        HeadFront front = HeadFront.of(instrument);
        BodySide side = BodySide.of(instrument);
        NeckSide neck = NeckSide.of(instrument);
        HeadSide head = HeadSide.of(instrument);
        List<Curve> parts = List.of(
                Board.of(instrument),
                Board.nut(instrument),
                Board.button(instrument),
                Board.neckBack(instrument),
                Tailpiece.saddle(instrument),
                Tailpiece.endButton(instrument),
                front.silhouette(),
                front.pegbox(),
                head.silhouette(),
                head.eye(),
                side.belly(),
                side.back(),
                side.ribs(),
                neck.board(),
                neck.neck(),
                neck.bridge(),
                neck.tailpiece(),
                Pegs.of(instrument).get(0));
        for (int i = 0; i < parts.size(); i++) {
            assertThat(parts.get(i).outline(0.5).isSimple())
                    .as("part %d of the list", i)
                    .isTrue();
        }
    }

    @Test
    void stringsOfAViolinMeasureThirtyThreeAndAHalfOverTheBridge() {
        InstrumentShape violin = InstrumentShape.violin();
        assertThat(Strings.onBridge(violin, 0).distanceTo_mm(Strings.onBridge(violin, 3)))
                .isEqualTo(33.5, within(1e-9));
    }

    @Test
    void bridgeHasItsFeetAndItsHeightWhetherHighOrCutLow() {
        for (double height_mm : new double[] {27, 33, 37}) {
            Outline bridge = BridgeFront.of(41, height_mm, 2).silhouette().outline(0.1);
            assertThat(bridge.isSimple()).isTrue();
            assertThat(bridge.width_mm()).isCloseTo(41, within(0.1));
            // The crown is tilted by the difference of the shoulders, so its highest point stands a little above the
            // middle.
            assertThat(bridge.length_mm()).isBetween(height_mm - 0.05, height_mm + 0.5);
        }
    }

    @Test
    void openingsOfTheBridgeLieInsideIt() {
        Outline bridge = BridgeFront.of(41, 33, 2).silhouette().outline(0.1);
        assertThat(BridgeFront.of(41, 33, 2).openings())
                .allSatisfy(opening -> assertThat(bridge.inset(1).contains(opening.outline(0.1)))
                        .isTrue());
    }

    @Test
    void bridgeLowerThanItsCutOutsIsRefused() {
        assertThatThrownBy(() -> BridgeFront.of(41, 20, 0))
                .hasMessage("bridge height 20.0 mm does not go with feet 41.0 mm wide; give 25.4 to 57.4 mm");
    }
}
