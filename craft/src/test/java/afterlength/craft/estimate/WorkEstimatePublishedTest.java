package afterlength.craft.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked example of a job for playing order, docs/sources.md#shop-times. */
class WorkEstimatePublishedTest {
    /** The source prints hours with one decimal. */
    private static final double HALF_A_DIGIT_H = 0.05;

    /** Half a printed digit, and the sampling error of 10 000 runs (0.1 % of 14.6 h) beside it. */
    private static final double HALF_A_DIGIT_AND_SAMPLING_H = 0.065;

    private static final List<HandsOn> STEPS = List.of(
            // receiving: call, receipt, label and quarantine check
            new HandsOn(10, 15, 25),
            new HandsOn(10, 15, 25),
            new HandsOn(5, 10, 15),
            // examination: photographs, raking light, ultraviolet, measures, findings written
            new HandsOn(20, 30, 50),
            new HandsOn(15, 25, 45),
            new HandsOn(10, 15, 30),
            new HandsOn(20, 30, 45),
            new HandsOn(20, 35, 60),
            // proposal: options worked out, talk with the owner
            new HandsOn(30, 60, 120),
            new HandsOn(15, 30, 45),
            // one seam: clean, glue, check
            new HandsOn(5, 15, 30),
            new HandsOn(10, 15, 30),
            new HandsOn(5, 5, 10),
            // one crack from outside: clean, glue, level
            new HandsOn(10, 20, 40),
            new HandsOn(10, 20, 35),
            new HandsOn(5, 10, 20),
            // pegs eased
            new HandsOn(10, 15, 25),
            // board reglued: lift and clean, glue
            new HandsOn(15, 25, 40),
            new HandsOn(10, 15, 20),
            // post, bridge, strings on, to pitch, second adjustment
            new HandsOn(20, 35, 60),
            new HandsOn(75, 120, 180),
            new HandsOn(15, 20, 35),
            new HandsOn(15, 25, 40),
            new HandsOn(15, 30, 60),
            // after photographs, report, handover
            new HandsOn(20, 30, 45),
            new HandsOn(30, 60, 120),
            new HandsOn(20, 35, 60));

    @Test
    void leastUsualAndMostAddUpAsPrinted() {
        assertThat(hours(STEPS.stream().mapToDouble(HandsOn::low_min).sum())).isCloseTo(7.4, within(HALF_A_DIGIT_H));
        assertThat(hours(STEPS.stream().mapToDouble(HandsOn::typical_min).sum()))
                .isCloseTo(12.7, within(HALF_A_DIGIT_H));
        assertThat(hours(STEPS.stream().mapToDouble(HandsOn::high_min).sum())).isCloseTo(21.8, within(HALF_A_DIGIT_H));
    }

    @Test
    void meanAndEightyPerCentPointAreAsPrinted() {
        WorkEstimate job = WorkEstimate.of(1, STEPS);
        assertThat(hours(job.expected_min())).isCloseTo(14.0, within(HALF_A_DIGIT_H));
        assertThat(hours(job.unpacedPoint_min(0.80))).isCloseTo(14.6, within(HALF_A_DIGIT_AND_SAMPLING_H));
    }

    @Test
    void addingUsualTimesUndershootsTheMeanByNinePerCentAndTheEightyPerCentPointByThirteen() {
        double usual_min = STEPS.stream().mapToDouble(HandsOn::typical_min).sum();
        WorkEstimate job = WorkEstimate.of(1, STEPS);
        assertThat(1 - usual_min / job.expected_min()).isCloseTo(0.09, within(0.005));
        assertThat(1 - usual_min / job.unpacedPoint_min(0.80)).isCloseTo(0.13, within(0.006));
    }

    private static double hours(double minutes) {
        return minutes / 60;
    }
}
