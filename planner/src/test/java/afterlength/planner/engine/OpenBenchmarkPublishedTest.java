package afterlength.planner.engine;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.Instances;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A few instances of the open benchmarks with a small effort: plans are valid, none is below a proven bound, and they come near the
 * best known. How near with the full effort is told in docs/performance.md.
 */
class OpenBenchmarkPublishedTest {
    private static final Effort EFFORT = Effort.ofLayings(4000);

    /** In percent of the best known; a quarter of a second's work is not held to more. */
    private static final double NEAR_PCT = 6;

    private static final int EVERY = 6;

    static Stream<Instances.Known> some() {
        List<Instances.Known> all = Instances.listKnown();
        return Stream.iterate(0, at -> at < all.size(), at -> at + EVERY).map(all::get);
    }

    @ParameterizedTest
    @MethodSource("some")
    void comesNearTheBestKnownAndNeverBelowTheBound(Instances.Known known) {
        ProjectAnswer answer = ProjectPlanner.plan(known.project(), EFFORT);
        assertThat(answer).isInstanceOf(ProjectAnswer.Made.class);
        ProjectAnswer.Made made = (ProjectAnswer.Made) answer;
        assertThat(ProjectCheck.of(known.project(), made.starts())).isEmpty();
        assertThat(made.makespan()).isGreaterThanOrEqualTo(known.lower());
        assertThat(made.bound()).isLessThanOrEqualTo(known.upper());
        assertThat(100.0 * (made.makespan() - known.upper()) / known.upper()).isLessThanOrEqualTo(NEAR_PCT);
    }
}
