package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures for which the thickest section is known by formula, lying level and turned. */
class SectionClosedFormOracleTest {
    /** What is left of a range of turns times the longest bar. */
    private static final double CLOSE_mm = 1e-4;

    @ParameterizedTest
    @ValueSource(doubles = {2, 4.5, 6, 6.36, 7, 8, 8.8})
    void inACircleTheDiagonalIsTheDiameter(double width_mm) {
        double thickness_mm = thickest(Figures.circle(4.5, 400), width_mm);
        double largest_mm = Math.sqrt(81 - width_mm * width_mm);
        double inner_mm = 9 * Math.cos(Math.PI / 400);
        double smallest_mm = Math.sqrt(inner_mm * inner_mm - width_mm * width_mm);
        assertThat(thickness_mm).isBetween(smallest_mm, largest_mm);
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.5, 7, 11.9, 12})
    void inARectangleABarLiesLevel(double width_mm) {
        assertThat(thickest(Figures.rectangle(12, 4), width_mm)).isCloseTo(4, within(CLOSE_mm));
        assertThat(thickest(Figures.turned(Figures.rectangle(12, 4), 33), width_mm))
                .isCloseTo(4, within(CLOSE_mm));
    }

    /** A section longer than the rectangle touches all four of its sides. */
    @ParameterizedTest
    @ValueSource(doubles = {12.02, 12.05, 12.1, 12.2})
    void inARectangleALongerBarLiesAcross(double width_mm) {
        double t_mm = thickest(Figures.turned(Figures.rectangle(12, 4), 70), width_mm);
        double diagonal_mm = Math.hypot(width_mm, t_mm);
        double turn = Math.atan2(t_mm, width_mm) + Math.acos(12 / diagonal_mm);
        assertThat(width_mm * Math.sin(turn) + t_mm * Math.cos(turn)).isCloseTo(4, within(CLOSE_mm));
    }

    @ParameterizedTest
    @ValueSource(doubles = {3.5, 5, 9, 20})
    void inAnAngleOfTwoArmsABarLiesInOneArm(double width_mm) {
        Outline angle = Figures.of(0, 0, 20, 0, 20, 3, 3, 3, 3, 20, 0, 20);
        assertThat(thickest(angle, width_mm)).isCloseTo(3, within(CLOSE_mm));
        assertThat(thickest(Figures.turned(angle, -17), width_mm)).isCloseTo(3, within(CLOSE_mm));
    }

    @Test
    void acrossTheCornerOfAnAngleABarLiesAtHalfARightAngle() {
        Outline angle = Figures.of(0, 0, 9, 0, 9, 5, 5, 5, 5, 9, 0, 9);
        double width_mm = 11;
        double across_mm = (2 * Math.sqrt(2) * 5 - width_mm) / 2;
        assertThat(thickest(angle, width_mm)).isGreaterThanOrEqualTo(across_mm - CLOSE_mm);
    }

    private static double thickest(Outline hole, double width_mm) {
        return new HoleSearch(hole)
                .findThickestSharply(width_mm)
                .orElseThrow()
                .section()
                .thickness_mm();
    }
}
