package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Printed geometry of boards, spacings and crowns; sources in docs/sources.md, headings named beside each value. */
class GeometryPublishedTest {
    /** docs/sources.md#scoop-survey: 42 mm throughout, scoop 0.75 under G and 0.25 under E, 0.68 on the centre line. */
    @Test
    void oneRadiusThroughoutNeedsMoreScoopOnTheCentreLine() {
        // the page does not print the string paths; 16.5 mm at the nut and 31 mm at the end were fitted
        double halfAtMiddle_mm = (16.5 + 31.0) / 4;
        double edge_mm = (0.75 + 0.25) / 2;
        double evenChord_mm = (BoardArc.height_mm(42, 16.5 / 2) + BoardArc.height_mm(42, 31.0 / 2)) / 2;
        double centre_mm = -(evenChord_mm - edge_mm - BoardArc.height_mm(42, halfAtMiddle_mm));
        assertThat(centre_mm).isCloseTo(0.68, within(0.02));
    }

    /** docs/sources.md#scoop-survey: scoop 0.75, 0.50, 0.25 leaves a mid-length radius of 38. */
    @Test
    void anEvenScoopTightensTheRadiusAtMidLength() {
        double half_mm = (16.5 + 31.0) / 4;
        double evenChord_mm = (BoardArc.height_mm(42, 16.5 / 2) + BoardArc.height_mm(42, 31.0 / 2)) / 2;
        double sagitta_mm = -0.50 - (evenChord_mm - 0.50);
        double radius_mm = (half_mm * half_mm + sagitta_mm * sagitta_mm) / (2 * sagitta_mm);
        assertThat(radius_mm).isCloseTo(38, within(0.5)); // printed without decimals
    }

    /** docs/sources.md#bishopp-in-hart: outer strings over the feet, inner ones at a third. */
    @Test
    void equallySpacedInnerStringsLieAtThirds() {
        double[] y_mm =
                new StringSpacing.ByCentres(33.5).places_mm(Bench.violin().strings());
        assertThat((y_mm[1] - y_mm[0]) / 33.5).isCloseTo(1.0 / 3, within(1e-12));
        assertThat((y_mm[2] - y_mm[0]) / 33.5).isCloseTo(2.0 / 3, within(1e-12));
    }

    /** docs/sources.md#mayson: spacings 7/32 and 7/16 inch, 13 inch string; his bridges measure 33.3 to 34.9 mm. */
    @Test
    void maysonsInchesGiveABridgeNearHisOwn() {
        double inch_mm = 25.4;
        BridgeInputs inputs = Bench.violin()
                .change()
                .speakingLength_mm(13 * inch_mm)
                .nutSpacing(new StringSpacing.ByCentres(3 * 7 / 32.0 * inch_mm))
                .bridgeSpacing(new StringSpacing.ByCentres(3 * 7 / 16.0 * inch_mm))
                .grooveFraction(0)
                .projection_mm(28)
                .done();
        // his own two figures; a sanity band, since projection and clearances are not his
        assertThat(Bench.shape(inputs).centreHeight().mm()).isBetween(33.3, 34.9);
    }

    /** docs/sources.md#board-blank: half-width 12 and 21.25, radius 42, edge 5.5; even allowance under blanks of 9 and 13. */
    @Test
    void theCrownOfABoardStandsOverItsEdgesByTheArc() {
        assertThat(5.5 - BoardArc.height_mm(42, 12)).isCloseTo(7.25, within(0.006));
        assertThat(5.5 - BoardArc.height_mm(42, 21.25)).isCloseTo(11.27, within(0.006));
    }

    @Test
    void readsBackTheChordsOfFourDigitisedBridgePoints() {
        // docs/sources.md#digitised-violin, drawn at 0.87 scale: a numeric fixture only
        List<CrossPoint> points = List.of(
                new CrossPoint(-11.744, 41.691),
                new CrossPoint(-3.744, 43.224),
                new CrossPoint(6.533, 43.179),
                new CrossPoint(14.111, 41.979));
        CrownPolyline crown = new CrownPolyline(points);
        assertThat(crown.highest()).isEqualTo(points.get(1));
        assertThat(chord_deg(points.get(0), points.get(1))).isCloseTo(10.85, within(0.006));
        assertThat(chord_deg(points.get(1), points.get(2))).isCloseTo(-0.25, within(0.006));
        assertThat(chord_deg(points.get(2), points.get(3))).isCloseTo(-9.00, within(0.006));
        assertThat(over_mm(points.get(0), points.get(1), points.get(2))).isCloseTo(0.88, within(0.006));
        assertThat(over_mm(points.get(1), points.get(2), points.get(3))).isCloseTo(0.67, within(0.006));
    }

    private static double chord_deg(CrossPoint a, CrossPoint b) {
        return Math.toDegrees(Math.atan2(b.z_mm() - a.z_mm(), b.y_mm() - a.y_mm()));
    }

    private static double over_mm(CrossPoint left, CrossPoint middle, CrossPoint right) {
        double y_mm = right.y_mm() - left.y_mm();
        double z_mm = right.z_mm() - left.z_mm();
        double across = y_mm * (middle.z_mm() - left.z_mm()) - z_mm * (middle.y_mm() - left.y_mm());
        return across / Math.hypot(y_mm, z_mm);
    }
}
