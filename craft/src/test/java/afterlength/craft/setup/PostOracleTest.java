package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Problem;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Posts between arched plates that are no paraboloids, their insides found by search ({@link PlateModel}). */
class PostOracleTest {
    private static final int CASES = 500;
    /** As {@link PlateSurface.Heights} asks for. */
    private static final double REACH_mm = 5;

    private static PostInputs inputs(double rib_mm, Plate belly, Plate back) {
        return new PostInputs(2.5, 1, 6.2, rib_mm, belly, back, PostErrors.USUAL);
    }

    private static PostCut cut(PostInputs inputs) {
        PostAnswer answer = PostCut.of(inputs);
        if (answer instanceof PostCut cut) {
            return cut;
        }
        throw new AssertionError(answer.toString());
    }

    private static Plate byHeights(PlateModel model) {
        return new Plate(new PlateSurface.Heights(model.cross(REACH_mm)), model.thickness_mm());
    }

    @Test
    void heightsAboutThePostGiveLengthAndBevels() {
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            PlateModel belly = new PlateModel(random);
            PlateModel back = new PlateModel(random);
            PostCut post = cut(inputs(31, byHeights(belly), byHeights(back)));
            String name = "seed " + seed;
            double searched_mm = 31 + belly.inside_mm(0, 0) + back.inside_mm(0, 0);
            assertThat(post.length().mm()).as(name).isCloseTo(searched_mm, within(0.05));
            assertThat(post.belly().along().deg()).as(name).isCloseTo(belly.insideSlopeAlong_deg(), within(0.2));
            assertThat(post.belly().across().deg()).as(name).isCloseTo(belly.insideSlopeAcross_deg(), within(0.2));
            assertThat(post.back().along().deg()).as(name).isCloseTo(back.insideSlopeAlong_deg(), within(0.2));
            assertThat(post.back().across().deg()).as(name).isCloseTo(back.insideSlopeAcross_deg(), within(0.2));
        }
    }

    @Test
    void theLongestSideIsFoundOnTheRim() {
        for (long seed = 1; seed <= 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            PlateModel belly = new PlateModel(random);
            PlateModel back = new PlateModel(random);
            PostCut post = cut(inputs(31, byHeights(belly), byHeights(back)));
            double searched_mm = DoubleStream.iterate(0, turn -> turn < 2 * Math.PI, turn -> turn + 0.01)
                    .map(turn -> 31
                            + belly.inside_mm(3.1 * Math.cos(turn), 3.1 * Math.sin(turn))
                            + back.inside_mm(3.1 * Math.cos(turn), 3.1 * Math.sin(turn)))
                    .max()
                    .orElseThrow();
            // the cut is flat and the plates are hollow, by 3.1² / 2R on either end
            assertThat(post.longestSide().mm()).as("seed " + seed).isCloseTo(searched_mm, within(0.25));
        }
    }

    @Test
    void aSlopeReadWithABevelIsNearlyAsGood() {
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            PlateModel model = new PlateModel(random);
            Plate sloped = new Plate(
                    new PlateSurface.Sloped(
                            model.outside_mm(0, 0), model.outsideSlopeAlong_deg(), model.outsideSlopeAcross_deg()),
                    model.thickness_mm());
            PostCut post = cut(inputs(31, sloped, sloped));
            assertThat(post.length().mm()).as("seed " + seed).isCloseTo(31 + 2 * model.inside_mm(0, 0), within(0.05));
        }
    }

    @Test
    void theStatedErrorIsThatOfReadingsShakenByAsMuch() {
        SplittableRandom random = new SplittableRandom(11);
        PlateModel model = new PlateModel(random);
        PostCut still = cut(inputs(31, byHeights(model), byHeights(model)));
        int times = 4000;
        double length = 0;
        double slope = 0;
        for (int i = 0; i < times; i++) {
            PostCut shaken = cut(inputs(31 + shake(random), shaken(model, random), shaken(model, random)));
            length += Math.pow(shaken.length().mm() - still.length().mm(), 2);
            slope += Math.pow(
                    shaken.belly().across().deg() - still.belly().across().deg(), 2);
        }
        // the scatter of a scatter of 4000, about one in a hundred, and slopes on a sloping plate count a little less
        assertThat(Math.sqrt(length / times)).isCloseTo(still.plusMinus().mm(), within(0.02));
        assertThat(Math.sqrt(slope / times)).isCloseTo(still.belly().plusMinus().deg(), within(0.07));
    }

    private static Plate shaken(PlateModel model, SplittableRandom random) {
        List<PlateHeight> points = model.cross(REACH_mm).stream()
                .map(point -> new PlateHeight(point.along_mm(), point.across_mm(), point.height_mm() + shake(random)))
                .toList();
        return new Plate(new PlateSurface.Heights(points), model.thickness_mm() + shake(random));
    }

    private static double shake(SplittableRandom random) {
        return 0.1 * random.nextGaussian();
    }

    @Test
    void flatPlatesNeedNoBevel() {
        Plate flat = new Plate(new PlateSurface.Sloped(4, 0, 0), 3);
        PostCut post = cut(inputs(30, flat, flat));
        assertThat(post.length().mm()).isCloseTo(32, within(1e-12));
        assertThat(post.longestSide().mm()).isCloseTo(32, within(1e-12));
        assertThat(post.belly().along().deg()).isZero();
        assertThat(post.plusMinus().mm()).isCloseTo(Math.sqrt(5) * 0.1, within(1e-12));
    }

    @Test
    void aTwistedSurfaceNeedsSixPoints() {
        List<PlateHeight> points = List.of(
                new PlateHeight(0, 0, 10),
                new PlateHeight(6, 0, 10),
                new PlateHeight(-6, 0, 10),
                new PlateHeight(0, 6, 10),
                new PlateHeight(0, -6, 10),
                new PlateHeight(6, 6, 10.36));
        Paraboloid twisted = Paraboloid.find(points).orElseThrow();
        assertThat(twisted.f()).isCloseTo(0.01, within(1e-12));
        assertThat(twisted.height_mm(-6, -6)).isCloseTo(10.36, within(1e-12));
    }

    @Test
    void everythingWrongIsNamedAtOnce() {
        Plate inLine = new Plate(
                new PlateSurface.Heights(List.of(
                        new PlateHeight(0, 0, 10),
                        new PlateHeight(1, 1, 10),
                        new PlateHeight(2, 2, 10),
                        new PlateHeight(3, 3, 10),
                        new PlateHeight(4, 4, 10))),
                -3);
        Plate steep = new Plate(new PlateSurface.Sloped(Double.NaN, 50, -50), 3);
        PostInputs wrong = new PostInputs(99, -99, 0, 0, inLine, steep, new PostErrors(-1, 0.1, 0.1, 0.5));
        assertThat(((PostRefused) PostCut.of(wrong)).problems())
                .extracting(Problem::at)
                .containsExactly(
                        "/behind_foot_mm",
                        "/inside_foot_mm",
                        "/diameter_mm",
                        "/rib_height_mm",
                        "/belly/thickness_mm",
                        "/belly/heights_mm",
                        "/back/height_mm",
                        "/back/slope_along_deg",
                        "/back/slope_across_deg",
                        "/errors/height_mm");
    }

    @Test
    void tooFewHeightsDoNotFixASurface() {
        Plate four = new Plate(new PlateSurface.Heights(List.of(new PlateHeight(0, 0, 10))), 3);
        Plate flat = new Plate(new PlateSurface.Sloped(4, 0, 0), 3);
        assertThat(((PostRefused) PostCut.of(inputs(30, four, flat))).problems())
                .extracting(Problem::message)
                .containsExactly(
                        "The 1 heights of the belly do not fix a surface; at least 5 are needed, not all in line. Measure"
                                + " on the axis of the post and on either side of it, along and across.");
    }

    @Test
    void aPostOfNoLengthIsRefused() {
        Plate low = new Plate(new PlateSurface.Sloped(-20, 0, 0), 3);
        assertThat(((PostRefused) PostCut.of(inputs(30, low, low))).problems())
                .extracting(Problem::message)
                .containsExactly(
                        "The post would be -16 mm long; it must be more than 0 mm. Measure heights over the gluing planes,"
                                + " and the ribs between them.");
    }
}
