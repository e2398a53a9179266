package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Laws of the row of cleats, on drawn cracks among things to keep off; to run a case again, use its seed. */
class CleatRowPropertyTest {
    private static final int CASES = 400;
    private static final double ROUNDING_mm = 1e-6;

    @Test
    void noCleatLiesOnAnythingOrOnAnother() {
        for (long seed = 1; seed <= CASES; seed++) {
            CleatPlan plan = drawn(new SplittableRandom(seed));
            CleatRow row = CleatRow.of(plan);
            for (int i = 0; i < row.cleats().size(); i++) {
                Geometry face = Figures.polygon(row.cleats().get(i).outline());
                for (KeepOff area : plan.keepOffs()) {
                    assertThat(Figures.polygon(area.outline()).distance(face))
                            .as("seed " + seed)
                            .isGreaterThanOrEqualTo(area.margin_mm() * 0.99 - ROUNDING_mm);
                }
                for (int other = 0; other < i; other++) {
                    assertThat(Figures.polygon(row.cleats().get(other).outline())
                                    .distance(face))
                            .as("seed " + seed)
                            .isGreaterThanOrEqualTo(1 - ROUNDING_mm);
                }
            }
        }
    }

    @Test
    void everyCleatLiesOnTheCrackAndOffItsEnds() {
        for (long seed = 1; seed <= CASES; seed++) {
            CleatPlan plan = drawn(new SplittableRandom(seed));
            for (PlacedCleat cleat : CleatRow.of(plan).cleats()) {
                double left_mm = plan.crack().length_mm() - plan.toEnds_mm();
                assertThat(cleat.along_mm())
                        .as("seed " + seed)
                        .isBetween(plan.toEnds_mm() - ROUNDING_mm, left_mm + ROUNDING_mm);
                assertThat(cleat.centre())
                        .as("seed " + seed)
                        .isEqualTo(plan.crack().at(cleat.along_mm()));
                assertThat(cleat.moved_mm()).as("seed " + seed).isLessThanOrEqualTo(plan.spacing_mm() / 2);
            }
        }
    }

    @Test
    void theGrainNeverRunsAlongTheCrack() {
        for (long seed = 1; seed <= CASES; seed++) {
            CleatPlan plan = drawn(new SplittableRandom(seed));
            for (PlacedCleat cleat : CleatRow.of(plan).cleats()) {
                double crack_deg = plan.crack().direction_deg(cleat.along_mm());
                assertThat(CleatGrain.apart_deg(cleat.grain_deg(), crack_deg))
                        .as("seed " + seed)
                        .isGreaterThanOrEqualTo(CleatGrain.ALONG_DEG);
            }
        }
    }

    @Test
    void nothingIsLostAndMassesAddUp() {
        for (long seed = 1; seed <= CASES; seed++) {
            CleatPlan plan = drawn(new SplittableRandom(seed));
            CleatRow row = CleatRow.of(plan);
            CleatRow free = CleatRow.of(new CleatPlan(
                    plan.crack(),
                    plan.cleat(),
                    plan.shape(),
                    plan.grain(),
                    plan.spacing_mm(),
                    plan.toEnds_mm(),
                    plan.plateGrain_deg(),
                    List.of(),
                    plan.density_kg_m3()));
            assertThat(row.cleats().size() + row.leftOut().size())
                    .as("seed " + seed)
                    .isEqualTo(free.cleats().size() + free.leftOut().size());
            double each_g = plan.cleat().length_mm()
                    * plan.cleat().width_mm()
                    * plan.cleat().thickness_mm()
                    * plan.density_kg_m3()
                    / 1e6;
            assertThat(row.addedMass_g())
                    .as("seed " + seed)
                    .isCloseTo(each_g * row.cleats().size(), within(1e-9));
        }
    }

    @Test
    void aFreeStraightCrackGetsAnEvenRow() {
        Crack crack = new Crack(List.of(Point.of(0, 0), Point.of(0, 100)));
        CleatRow row = CleatRow.of(new CleatPlan(
                crack,
                CleatPlan.USUAL,
                CleatShape.LOZENGE,
                CleatGrain.DIAGONAL,
                28,
                8,
                90,
                List.of(),
                CleatPlan.SPRUCE_KG_M3));
        assertThat(row.cleats().stream().map(PlacedCleat::along_mm)).containsExactly(8.0, 36.0, 64.0, 92.0);
        assertThat(row.leftOut()).isEmpty();
        assertThat(row.addedMass_g()).isCloseTo(0.187, within(0.0005));
    }

    @Test
    void aCrackShorterThanItsTwoEndsGetsNone() {
        Crack crack = new Crack(List.of(Point.of(0, 0), Point.of(0, 12)));
        CleatRow row = CleatRow.of(new CleatPlan(
                crack, CleatPlan.USUAL, CleatShape.SQUARE, CleatGrain.CROSSWISE, 25, 8, 90, List.of(), 430));
        assertThat(row.cleats()).isEmpty();
        assertThat(row.addedMass_g()).isZero();
    }

    private static CleatPlan drawn(SplittableRandom random) {
        List<Point> points = new ArrayList<>();
        Point at = Point.of(0, 0);
        for (int i = 0; i < 2 + random.nextInt(5); i++) {
            points.add(at);
            at = at.plus(random.nextDouble(-4, 4), random.nextDouble(8, 30));
        }
        List<KeepOff> areas = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            Point centre = Point.of(random.nextDouble(-8, 8), random.nextDouble(0, 90));
            Outline area = new Outline(new PlacedSection(
                            new Section(random.nextDouble(2, 12), random.nextDouble(2, 12)),
                            centre,
                            random.nextDouble(180))
                    .corners());
            KeepOff.Kind kind = random.nextBoolean() ? KeepOff.Kind.BAR : KeepOff.Kind.LINING;
            areas.add(new KeepOff(kind, area, random.nextDouble(0, 3)));
        }
        return new CleatPlan(
                new Crack(points),
                new Cleat(random.nextDouble(3, 12), random.nextDouble(3, 12), random.nextDouble(0.5, 2)),
                random.nextBoolean() ? CleatShape.SQUARE : CleatShape.LOZENGE,
                random.nextBoolean() ? CleatGrain.DIAGONAL : CleatGrain.CROSSWISE,
                random.nextDouble(15, 32),
                random.nextDouble(0, 10),
                90 + random.nextDouble(-60, 60),
                areas,
                430);
    }
}
