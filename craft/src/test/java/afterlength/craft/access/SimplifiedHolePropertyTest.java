package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** What leaving out corners costs, and that it costs no more than is reckoned with; by another library's distances. */
class SimplifiedHolePropertyTest {
    private static final double ROUNDING_MM = 1e-9;

    @Test
    void noCornerLiesFurtherFromTheNewEdgeThanAllowed() {
        for (double tolerance_mm : new double[] {Frontier.SIMPLIFIED_MM, SearchedHole.ROUGH_MM}) {
            for (long seed = 1; seed <= 300; seed++) {
                Outline hole = Figures.drawn(seed);
                Geometry edge = Figures.polygon(hole.simplified(tolerance_mm)).getExteriorRing();
                for (Point corner : hole.points()) {
                    Coordinate place = new Coordinate(corner.x_mm(), corner.y_mm());
                    assertThat(edge.distance(Figures.PLANE.createPoint(place)))
                            .as("seed " + seed + " " + corner)
                            .isLessThanOrEqualTo(tolerance_mm + ROUNDING_MM);
                }
            }
        }
    }

    /** Every bound that the search takes from the rough drawing rests on this. */
    @Test
    void nothingIsThickerThanTheRoughDrawingAllows() {
        for (long seed = 1; seed <= 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SearchedHole hole = new SearchedHole(Figures.drawn(seed));
            double width_mm = hole.turns().longest_mm() * random.nextDouble(0.1, 0.9);
            double turn = random.nextDouble(Math.PI);
            double takenIn_mm = 2 * hole.rough().deviation_mm();
            double thickness_mm = hole.turns().at(turn).thickest(width_mm, 0).thickness();
            LevelBar bar = hole.rough().turns().at(turn).thickest(width_mm - takenIn_mm, 0);
            assertThat(thickness_mm)
                    .as("seed " + seed + ", width " + width_mm)
                    .isLessThanOrEqualTo(bar.thickness() + takenIn_mm + ROUNDING_MM);
        }
    }

    /** A hair's breadth cut has no corner left that matters; the search goes on with the cut as it is. */
    @Test
    void aCutThinnerThanTheToleranceKeepsItsCorners() {
        Outline cut = Figures.rectangle(20, 0.004);
        assertThat(cut.simplified(Frontier.SIMPLIFIED_MM)).isEqualTo(cut);
        assertThat(new HoleSearch(cut).findThickest(3)).isEmpty();
    }

    @Test
    void whatIsRuledOutIsRuledOutTheOtherWayRound() {
        SearchedHole hole = new SearchedHole(Figures.rectangle(30, 20));
        double longest_mm = Math.hypot(30, 20);
        assertThat(hole.ceiling_mm(12)).isCloseTo(longest_mm, within(ROUNDING_MM));
        hole.ruleOut(10, 4);
        hole.ruleOut(15, 5);
        assertThat(hole.ceiling_mm(4)).isCloseTo(longest_mm, within(ROUNDING_MM));
        assertThat(hole.ceiling_mm(4.5)).isEqualTo(10);
        assertThat(hole.ceiling_mm(10)).isEqualTo(10);
        assertThat(hole.ceiling_mm(10.5)).isEqualTo(4);
        assertThat(hole.ceiling_mm(16)).isEqualTo(4);
    }
}
