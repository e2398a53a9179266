package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Ways through the hole that hand geometry knows to exist or not, and every way found looked at again by {@link Filled}. */
class CleatPassageOracleTest {
    private static final double CLEARANCE_mm = 0.3;
    private static final Outline ROUND = Figures.circle(6, 64);
    private static final Outline SLOT = Figures.rectangle(40, 6);

    /** Easy: on edge the cleat shows 8 × 1.2 mm, whose diagonal of 8.1 mm is far less than the opening of 12 mm. */
    @Test
    void aSmallCleatGoesThroughARoundHole() {
        free(new Cavity(ROUND, 3, 30), Carried.alone(new Cleat(8, 8, 1.2)), Point.of(20, 0));
    }

    /**
     * Hard: the slot lets the cleat of 20 mm slide in flat only at 43° or steeper (1.2/sin 43° + 3.3/tan 43° = 5.3 mm of the 5.4 mm
     * that two clearances leave), and then it needs 20·sin 43° + 1.2·cos 43° = 14.5 mm below. There are 15.5.
     */
    @Test
    void aLongCleatSlidesSlantingThroughASlot() {
        Motion motion = free(new Cavity(SLOT, 3, 15.5), Carried.alone(new Cleat(20, 9.5, 1.2)), Point.of(20, 30));
        assertThat(motion.poses().get(motion.poses().size() - 1).tilt_deg()).isZero();
    }

    /** Impossible: the middle of a cube of 10 mm would have to cross the plate, and no plane through it cuts less than 100 mm². */
    @Test
    void aCubeDoesNotGoThroughAHoleOfLessArea() {
        NoMotionFound none =
                none(new Cavity(Figures.circle(4.5, 64), 3, 30), Carried.alone(new Cleat(10, 10, 10)), Point.of(20, 0));
        assertThat(none.section()).isEqualTo(new Section(10, 10));
        assertThat(none.air_mm()).isCloseTo((9 / Math.sqrt(2) - 10) / 2, within(Frontier.TOLERANCE_MM));
    }

    /**
     * Impossible: whoever crosses both faces of a plate of 3 mm in a hole of 6 mm lies at 26.5° or steeper, so a stick of 30 mm, whose
     * upper end is just going in, reaches 30·sin 26.5° − 3 = 10.4 mm below. There are 5.
     */
    @Test
    void aStickLongerThanTheBodyIsDeepDoesNotGoIn() {
        none(new Cavity(Figures.circle(3, 64), 3, 5), Carried.alone(new Cleat(30, 2, 1.2)), Point.of(20, 0));
        free(new Cavity(Figures.circle(3, 64), 3, 40), Carried.alone(new Cleat(30, 2, 1.2)), Point.of(20, 0));
    }

    @Test
    void aClampComesInAcrossTheStemAndIsCarriedAlongTheHole() {
        InstrumentShape viola = InstrumentShape.viola();
        Cavity cavity = new Cavity(SoundHole.treble(viola).outline(1), 2.7, 36);
        Carried carried = Carried.on(new Clamp(25, 10, 8, 2.2, 2.2, 3), new Cleat(9.5, 9.5, 1.2));
        free(cavity, carried, SoundHole.lowerEye(viola).plus(0, 25));
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
        Cavity cavity = new Cavity(ROUND, 3, 30);
        Carried carried = Carried.alone(new Cleat(8, 8, 1.2));
        Motion straightDown = new Motion(List.of(new Pose(20, 0, 10, 0, 0), new Pose(20, 0, -10, 0, 0)));
        assertThat(new Filled(cavity).collisions(carried, straightDown)).isPositive();
        assertThat(DenseCheck.passes(cavity, carried, straightDown)).isFalse();
    }

    @Test
    void theSearchTellsHowFarItIsAndStopsWhenAsked() {
        Cavity cavity = new Cavity(Figures.circle(3, 64), 3, 5);
        Carried stick = Carried.alone(new Cleat(30, 2, 1.2));
        List<Double> shares = new ArrayList<>();
        CleatPassage.find(cavity, stick, Point.of(20, 0), 0, CLEARANCE_mm, shares::add);
        assertThat(shares).isSorted().allMatch(share -> share >= 0 && share < 1).hasSizeGreaterThan(10);
        MotionAnswer stopped = CleatPassage.find(cavity, stick, Point.of(20, 0), 0, CLEARANCE_mm, share -> share < 0.3);
        assertThat(stopped).isEqualTo(new MotionStopped());
    }

    private static Motion free(Cavity cavity, Carried carried, Point crack) {
        MotionAnswer answer = CleatPassage.find(cavity, carried, crack, 0, CLEARANCE_mm, share -> true);
        assertThat(answer).isInstanceOf(Motion.class);
        Motion motion = (Motion) answer;
        assertThat(new Filled(cavity).collisions(carried, motion)).isZero();
        Pose last = motion.poses().get(motion.poses().size() - 1);
        assertThat(Math.hypot(last.x_mm() - crack.x_mm(), last.y_mm() - crack.y_mm()))
                .isZero();
        assertThat(last.z_mm()).isEqualTo(-cavity.plate_mm() - CLEARANCE_mm);
        return motion;
    }

    private static NoMotionFound none(Cavity cavity, Carried carried, Point crack) {
        MotionAnswer answer = CleatPassage.find(cavity, carried, crack, 0, CLEARANCE_mm, share -> true);
        assertThat(answer).isInstanceOf(NoMotionFound.class);
        return (NoMotionFound) answer;
    }
}
