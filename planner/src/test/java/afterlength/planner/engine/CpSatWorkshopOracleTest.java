package afterlength.planner.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.planner.Instances;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import com.google.ortools.Loader;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The whole workshop as a constraint solver sees it: the engine's plan costs what the solver proves to be least, and the checker agrees with the solver's plan. */
class CpSatWorkshopOracleTest {
    static final List<String> TINY = Instances.TINY;

    /** Long enough for a busy machine; two seconds is what it takes on a quiet one. */
    private static final double MOST_SECONDS = 120;

    private static final Effort EFFORT = Effort.ofLayings(20_000);

    /** Sums of doubles against sums of whole numbers. */
    private static final double EXACT = 1e-9;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest
    @FieldSource("TINY")
    void agrees(String name) {
        Workshop workshop = Instances.workshop(name);
        CpSatWorkshop.Answer answer =
                CpSatWorkshop.plan(workshop, MOST_SECONDS, 2).orElseThrow();
        assertThat(answer.proven()).as("proven within " + MOST_SECONDS + " s").isTrue();
        assertThat(PlanCheck.of(workshop, answer.plan())).isEmpty();
        double optimum = PlanCost.of(workshop, answer.plan());
        assertThat(optimum).isCloseTo(answer.bound(), within(EXACT));
        assertThat(PlanCost.of(workshop, Planner.plan(workshop, EFFORT).orElseThrow()))
                .isCloseTo(optimum, within(EXACT));
    }
}
