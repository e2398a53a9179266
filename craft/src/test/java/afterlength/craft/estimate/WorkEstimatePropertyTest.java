package afterlength.craft.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkEstimatePropertyTest {
    /** Five standard errors of a mean of 10 000 runs: 5 / √10 000 of the spread. */
    private static final double STANDARD_ERRORS = 0.05;

    private static List<HandsOn> steps(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<HandsOn> steps = new ArrayList<>();
        for (int n = random.nextInt(1, 12); n > 0; n--) {
            double low_min = random.nextInt(0, 60);
            double typical_min = low_min + random.nextInt(0, 60);
            steps.add(new HandsOn(low_min, typical_min, typical_min + random.nextInt(1, 120)));
        }
        return steps;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void withoutTheCommonPaceMeanAndVarianceAgreeWithTheClosedForm(long seed) {
        List<HandsOn> steps = steps(seed);
        double mean_min = steps.stream().mapToDouble(HandsOn::mean_min).sum();
        double variance_min2 =
                steps.stream().mapToDouble(HandsOn::variance_min2).sum();
        double[] runs_min = WorkEstimate.of(seed, steps).unpaced_min();
        assertThat(mean(runs_min)).isCloseTo(mean_min, within(STANDARD_ERRORS * Math.sqrt(variance_min2)));
        // The variance of 10 000 runs scatters by about √(2 / 10 000) = 1.4 % of itself; five times that.
        assertThat(variance(runs_min)).isCloseTo(variance_min2, within(0.07 * variance_min2));
    }

    @Test
    void theCommonPaceHasMeanOneAndASpreadOfTwentyPerCent() {
        double[] factors = new double[WorkEstimate.RUNS];
        Arrays.setAll(factors, CommonPace::in);
        assertThat(mean(factors)).isCloseTo(1, within(STANDARD_ERRORS * CommonPace.SPREAD));
        assertThat(Math.sqrt(variance(factors))).isCloseTo(0.20, within(0.01));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void moreWorkNeverTakesLessTime(long seed) {
        WorkEstimate less = WorkEstimate.of(seed, steps(seed));
        WorkEstimate more = less.and(WorkEstimate.of(seed + 100, steps(seed + 100)));
        for (double share : new double[] {0.01, 0.10, 0.50, 0.90, 1}) {
            assertThat(more.point_min(share)).isGreaterThanOrEqualTo(less.point_min(share));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23})
    void theSameStepsAndSeedGiveTheSameAnswerInAnyOrderOfJoining(long seed) {
        WorkEstimate one = WorkEstimate.of(seed, steps(seed));
        WorkEstimate two = WorkEstimate.of(seed + 1, steps(seed + 1));
        assertThat(one.and(two).point_min(0.9)).isEqualTo(two.and(one).point_min(0.9));
        assertThat(WorkEstimate.of(seed, steps(seed)).point_min(0.9)).isEqualTo(one.point_min(0.9));
        assertThat(one.and(two).expected_min())
                .isCloseTo(one.expected_min() + two.expected_min(), within(1e-9)); // sums in another order
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33})
    void aStepStaysWithinItsTriangle(long seed) {
        for (HandsOn step : steps(seed)) {
            assertThat(step.at(0)).isEqualTo(step.low_min());
            assertThat(step.at(1)).isEqualTo(step.high_min());
            for (double share = 0.05; share < 1; share += 0.05) {
                assertThat(step.at(share)).isBetween(step.low_min(), step.high_min());
                assertThat(step.at(share)).isGreaterThanOrEqualTo(step.at(share - 0.05));
            }
        }
    }

    @Test
    void noWorkTakesNoTime() {
        assertThat(WorkEstimate.NOTHING.expected_min()).isZero();
        assertThat(WorkEstimate.NOTHING.point_min(0.9)).isZero();
        assertThat(WorkEstimate.of(1, List.of(new HandsOn(0, 0, 0))).point_min(0.9))
                .isZero();
    }

    @Test
    void whatCannotBeATimeIsRefusedInWholeWords() {
        assertThatThrownBy(() -> new HandsOn(20, 10, 30))
                .hasMessage("hands-on time is 20.0 / 10.0 / 30.0 min; allowed is least ≤ usual ≤ most, none below 0");
        assertThatThrownBy(() -> WorkEstimate.NOTHING.point_min(0))
                .hasMessage("the share of runs is 0.0; allowed is above 0, at most 1");
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
    }
}
