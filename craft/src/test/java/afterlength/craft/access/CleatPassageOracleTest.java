package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link Ways} through the hole that hand geometry knows to exist or not, and every way found looked at again by {@link Filled}. */
class CleatPassageOracleTest {
    @Test
    void aSmallCleatGoesThroughARoundHole() {
        free(Ways.EASY);
    }

    @Test
    void aLongCleatSlidesSlantingThroughASlot() {
        Motion motion = free(Ways.HARD);
        assertThat(motion.poses().get(motion.poses().size() - 1).tilt_deg()).isZero();
    }

    @Test
    void aCubeDoesNotGoThroughAHoleOfLessArea() {
        NoMotionFound none = none(Ways.CUBE);
        assertThat(none.section()).isEqualTo(new Section(10, 10));
        assertThat(none.air_mm()).isCloseTo((9 / Math.sqrt(2) - 10) / 2, within(Frontier.TOLERANCE_MM));
    }

    @Test
    void aStickLongerThanTheBodyIsDeepDoesNotGoIn() {
        none(Ways.STICK);
        free(Ways.STICK_IN_A_DEEP_BODY);
    }

    @Test
    void aClampComesInAcrossTheStemAndIsCarriedAlongTheHole() {
        free(Ways.CLAMP);
    }

    @Test
    void aClampDoesNotReachFurtherThanItsArm() {
        none(Ways.CLAMP_OUT_OF_REACH);
    }

    @Test
    void everyWayFoundIsFree() {
        int found = 0;
        for (long seed = 1; seed <= 12; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Cavity cavity = new Cavity(Figures.drawn(3 * seed), random.nextDouble(2, 4), random.nextDouble(10, 30));
            Cleat cleat = new Cleat(random.nextDouble(2, 8), random.nextDouble(1, 4), random.nextDouble(0.4, 1.2));
            Carried carried = seed % 2 == 0
                    ? Carried.alone(cleat)
                    : Carried.on(new Clamp(random.nextDouble(6, 14), 3, 1.5, 0.6, 0.5, 0.5), cleat);
            MotionAnswer answer = CleatPassage.find(
                    cavity,
                    carried,
                    Point.of(random.nextDouble(-5, 10), random.nextDouble(-5, 10)),
                    30,
                    0.1,
                    share -> true);
            if (answer instanceof Motion motion) {
                found++;
                assertThat(new Filled(cavity).collisions(carried, motion))
                        .as("seed " + seed)
                        .isZero();
            }
        }
        assertThat(found).isGreaterThan(3);
    }

    @Test
    void theSecondLookSeesACollision() {
        Cavity cavity = Ways.EASY.cavity();
        Carried carried = Ways.EASY.carried();
        Motion straightDown = new Motion(List.of(new Pose(20, 0, 10, 0, 0), new Pose(20, 0, -10, 0, 0)));
        assertThat(new Filled(cavity).collisions(carried, straightDown)).isPositive();
        assertThat(DenseCheck.passes(cavity, carried, straightDown)).isFalse();
    }

    @Test
    void theSearchTellsHowFarItIsAndStopsWhenAsked() {
        List<Double> shares = new ArrayList<>();
        Ways.STICK.find(shares::add);
        assertThat(shares).isSorted().allMatch(share -> share >= 0 && share < 1).hasSizeGreaterThan(10);
        assertThat(Ways.STICK.find(share -> share < 0.6)).isEqualTo(new MotionStopped());
        assertThat(Ways.STICK.find(share -> share < 0.1)).isEqualTo(new MotionStopped());
        assertThat(Ways.CLAMP.find(share -> false)).isEqualTo(new MotionStopped());
    }

    private static Motion free(Ways way) {
        MotionAnswer answer = way.find(share -> true);
        assertThat(answer).isInstanceOf(Motion.class);
        Motion motion = (Motion) answer;
        assertThat(new Filled(way.cavity()).collisions(way.carried(), motion)).isZero();
        Pose last = motion.poses().get(motion.poses().size() - 1);
        assertThat(Math.hypot(
                        last.x_mm() - way.crack().x_mm(),
                        last.y_mm() - way.crack().y_mm()))
                .isZero();
        assertThat(last.z_mm()).isEqualTo(-way.cavity().plate_mm() - Ways.CLEARANCE_MM);
        return motion;
    }

    private static NoMotionFound none(Ways way) {
        MotionAnswer answer = way.find(share -> true);
        assertThat(answer).isInstanceOf(NoMotionFound.class);
        return (NoMotionFound) answer;
    }
}
