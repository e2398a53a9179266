package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.estimate.HandsOn;
import afterlength.craft.units.Money;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretchedStepsPropertyTest {
    /** Sums of a dozen doubles. */
    private static final double ROUNDING_min = 1e-9;

    private static Treatment taking(String template, int low_min, int high_min) {
        return new Treatment(
                1,
                1,
                1,
                Tier.SOUND,
                "Wax the strings",
                "r",
                "l",
                Undoing.YES,
                "v",
                "",
                template,
                low_min,
                high_min,
                Money.NOTHING,
                false,
                1);
    }

    private static double sum(List<TemplateStep> steps, ToDoubleFunction<HandsOn> figure) {
        return steps.stream().map(TemplateStep::handsOn).mapToDouble(figure).sum();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void leastAndMostAddUpToWhatTheRestorerGave(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (TreatmentTemplate template : TreatmentTemplates.list()) {
            int low_min = random.nextInt(0, 900);
            int high_min = low_min + random.nextInt(0, 900);
            List<TemplateStep> steps = TreatmentTemplates.listSteps(taking(template.key(), low_min, high_min));
            assertThat(sum(steps, HandsOn::low_min)).isCloseTo(low_min, within(ROUNDING_min));
            assertThat(sum(steps, HandsOn::high_min)).isCloseTo(high_min, within(ROUNDING_min));
            assertThat(steps).hasSameSizeAs(template.steps());
        }
    }

    @Test
    void untouchedMinutesKeepTheTemplatesSteps() {
        for (TreatmentTemplate template : TreatmentTemplates.list()) {
            assertThat(TreatmentTemplates.listSteps(Treatment.from(template, 1)))
                    .isEqualTo(template.steps());
        }
    }

    @Test
    void ownWordsAreOneStepWithItsUsualTimeInTheMiddle() {
        assertThat(TreatmentTemplates.listSteps(taking("", 20, 60)))
                .singleElement()
                .satisfies(step -> {
                    assertThat(step.name()).isEqualTo("Wax the strings");
                    assertThat(step.handsOn()).isEqualTo(new HandsOn(20, 40, 60));
                    assertThat(step.mark()).isEqualTo("OWN WORDS");
                });
    }
}
