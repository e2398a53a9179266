package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An arc of 42 mm over 34 mm, its height by the formula of the arc, traced with the card lying anyhow. */
class CrownPointsTest {
    private static final double RADIUS_MM = 42;
    private static final double HALF_MM = 17;
    private static final double RISE_MM = RADIUS_MM - Math.sqrt(RADIUS_MM * RADIUS_MM - HALF_MM * HALF_MM);

    private static List<Point> traced(double turn_deg, boolean upsideDown) {
        List<Point> points = new ArrayList<>();
        double turn = Math.toRadians(turn_deg);
        for (double x = -HALF_MM; x <= HALF_MM; x += 1) {
            double up = Math.sqrt(RADIUS_MM * RADIUS_MM - x * x) - RADIUS_MM + RISE_MM;
            double y = upsideDown ? up : -up;
            points.add(Point.of(
                    100 + x * Math.cos(turn) - y * Math.sin(turn), 50 + x * Math.sin(turn) + y * Math.cos(turn)));
        }
        return points;
    }

    @Test
    void anArcComesOutLevelAndUpwardsHoweverItLay() {
        for (double turn_deg : new double[] {0, 33, 120, -75}) {
            for (boolean upsideDown : new boolean[] {false, true}) {
                List<Point> crown = CrownPoints.of(traced(turn_deg, upsideDown));
                assertThat(crown.get(0).x_mm()).isCloseTo(-HALF_MM, within(1e-9));
                assertThat(crown.get(0).y_mm()).isCloseTo(0, within(1e-9));
                assertThat(crown.get(17).x_mm()).isCloseTo(0, within(1e-9));
                assertThat(crown.get(17).y_mm()).isCloseTo(RISE_MM, within(1e-9));
            }
        }
    }

    @Test
    void theTextHasAHeadingAndOnePointALine() {
        assertThat(CrownPoints.text(List.of(Point.of(0, 0), Point.of(5, -1.25), Point.of(10, 0))))
                .isEqualTo("across_mm; up_mm\n-5; 0\n0; 1.25\n5; 0\n");
    }
}
