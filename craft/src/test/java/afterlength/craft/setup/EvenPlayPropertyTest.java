package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Even play keeps its promises on any instrument. */
class EvenPlayPropertyTest {
    private static final int CASES = 150;
    /** Where the halving of the search ends. */
    private static final double SEARCH_deg = 1e-5;

    private static BridgeInputs drawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BridgeInputs inputs = Bench.drawn(random).withCrown(new EvenPlayCrown());
        BassTreble scoop = new BassTreble(random.nextDouble(0, 2), random.nextDouble(0, 1.5));
        BridgeInputs scooped =
                inputs.change().board(inputs.board().withScoop(scoop)).done();
        return random.nextInt(3) == 0 ? scooped.change().waist(null).done() : scooped;
    }

    private static double opening_deg(BridgeShape shape) {
        BowMap map = (BowMap) BowMap.of(shape, BowMapAxes.usual(shape.inputs().speakingLength_mm()));
        return map.findTightest().orElseThrow().opening_deg();
    }

    @Test
    void itIsNeverWorseThanTheBestArc() {
        AtomicInteger compared = new AtomicInteger();
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeInputs inputs = drawn(seed);
            double even_deg = opening_deg(Bench.shape(inputs));
            String name = "seed " + seed;
            Optional<BestRadius> arc = BestRadius.find(inputs, BowMapAxes.usual(inputs.speakingLength_mm()));
            arc.ifPresent(best -> {
                compared.incrementAndGet();
                assertThat(even_deg).as(name).isGreaterThan(best.opening_deg() - SEARCH_deg);
                BridgeShape shape = Bench.shape(inputs.withCrown(new RadiusCrown(best.radius_mm())));
                assertThat(opening_deg(shape)).as(name).isCloseTo(best.opening_deg(), within(1e-9));
            });
        }
        assertThat(compared.get()).isGreaterThan(CASES / 3);
    }

    @Test
    void innerClearancesLieBetweenTheOuterTwo() {
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeShape shape = Bench.shape(drawn(seed));
            BassTreble wanted = shape.inputs().boardEndClearance_mm();
            for (SeatedString string : shape.strings()) {
                assertThat(string.boardEndClearance().mm())
                        .as("seed " + seed)
                        .isBetween(wanted.smaller_mm() - 1e-6, wanted.larger_mm() + 1e-6);
            }
        }
    }

    @Test
    void noSmallChangeOfOneInnerStringIsBetter() {
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeShape even = Bench.shape(drawn(seed));
            double best_deg = opening_deg(even);
            for (int string = 1; string < even.strings().size() - 1; string++) {
                for (double by_mm : new double[] {-0.3, -0.05, -0.005, 0.005, 0.05, 0.3}) {
                    moved(even, string, by_mm)
                            .ifPresent(
                                    other -> assertThat(opening_deg(other)).isLessThanOrEqualTo(best_deg + SEARCH_deg));
                }
            }
        }
    }

    /** The same bridge with one string moved, when its clearance still lies between the outer two. */
    private static Optional<BridgeShape> moved(BridgeShape even, int string, double by_mm) {
        List<CrossPoint> points = new ArrayList<>();
        for (SeatedString seated : even.strings()) {
            double wood_mm = seated.woodHeight().mm() - even.inputs().projection_mm();
            double lifted_mm = points.size() == string ? wood_mm + by_mm : wood_mm;
            points.add(new CrossPoint(seated.bridgeY().mm(), lifted_mm));
        }
        BridgeShape shape = Bench.shape(even.inputs().withCrown(new TemplateCrown(points)));
        BassTreble wanted = even.inputs().boardEndClearance_mm();
        double clearance_mm = shape.strings().get(string).boardEndClearance().mm();
        boolean between = clearance_mm >= wanted.smaller_mm() && clearance_mm <= wanted.larger_mm();
        return between ? Optional.of(shape) : Optional.empty();
    }

    @Test
    void withoutTensionsItLooksAtALightBow() {
        List<FittedString> strings = Bench.violin().strings().stream()
                .map(string -> FittedString.ofDiameter(string.name(), string.diameter_mm()))
                .toList();
        BridgeInputs inputs = Bench.violin()
                .change()
                .strings(strings)
                .crown(new EvenPlayCrown())
                .done();
        BowMapAxes light = BowMapAxes.usual(328).withoutForce();
        BridgeShape same = Bench.shape(Bench.violin().withCrown(new EvenPlayCrown(light)));
        assertThat(Bench.shape(inputs).centreHeight()).isEqualTo(same.centreHeight());
        assertThat(Bench.shape(inputs).caveats())
                .contains(
                        new Caveat.ScoopNotMeasured(),
                        new Caveat.WaistNotMeasured(),
                        new Caveat.EvenPlayWithoutForce());
        assertThat(same.caveats()).doesNotContain(new Caveat.EvenPlayWithoutForce());
    }

    @Test
    void aMapWithoutAPlayablePlaceIsRefused() {
        BowMapAxes beyond = new BowMapAxes(List.of(47), List.of(5.0), List.of(0.0));
        BridgeAnswer answer = Bridge.shape(Bench.violin().withCrown(new EvenPlayCrown(beyond)));
        assertThat(((BridgeRefused) answer).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message())
                        .isEqualTo(
                                "No stop of the map lies on the board; for even play at least one place must be playable. Add 0"
                                        + " for the open strings."));
    }

    @Test
    void threeCrownsStandSideBySide() {
        BridgeInputs inputs = Bench.violinWithBody();
        TemplateCrown narrow = new TemplateCrown(List.of(new CrossPoint(0, 0), new CrossPoint(10, 0)));
        CrownComparison comparison = CrownComparison.of(
                inputs, BowMapAxes.usual(328), List.of(new RadiusCrown(42), narrow, new EvenPlayCrown()));
        assertThat(comparison.trials().get(1)).isInstanceOf(CrownNotPossible.class);
        CrownTried arc = (CrownTried) comparison.trials().get(0);
        CrownTried even = (CrownTried) comparison.trials().get(2);
        assertThat(comparison.findRoomiest()).contains(even);
        assertThat(even.gainOver(arc).deg()).isPositive();
        assertThat(even.gainOver(arc).deg()).isEqualTo(-arc.gainOver(even).deg());
    }
}
