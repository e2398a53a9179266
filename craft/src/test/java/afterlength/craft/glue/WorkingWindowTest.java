package afterlength.craft.glue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.units.Problem;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WorkingWindowTest {
    /** 0.3·L²/α: 11.5 s for 2.5 mm of spruce, 30 s for 4 mm. */
    @Test
    void thePlateAnswersByItselfWhereThickWoodIsNotValid() {
        WorkingWindow.Known thin = Joints.known(Joints.plate(WoodHeat.SPRUCE, 20, 0.3, 2.5));
        assertThat(thin.model()).isEqualTo(GluingModel.PLATE);
        assertThat(thin.validFor_s()).isCloseTo(11.5, within(0.06));
        assertThat(thin.caveats())
                .contains(new GluingCaveat.PlateTooThin(thin.validFor_s()))
                .anyMatch(caveat ->
                        caveat.text().startsWith("Reckoned as thick wood this would hold for the first 11.5 s only"));
        WorkingWindow.Known quick = Joints.known(Joints.plate(WoodHeat.MAPLE, 20, 0.05, 4));
        assertThat(quick.model()).isEqualTo(GluingModel.HALF_SPACE);
        assertThat(quick.caveats()).contains(new GluingCaveat.PlateThickEnough(quick.validFor_s()));
        assertThat(Joints.known(Joints.thick(WoodHeat.SPRUCE, 20, 0.3)).model()).isEqualTo(GluingModel.HALF_SPACE);
        assertThat(Joints.known(Joints.plate(WoodHeat.SPRUCE, 20, 0.3, 4)).validFor_s())
                .isCloseTo(30, within(0.7));
    }

    /** A thick spread on a thin plate meets it at 36.2 °C: the wood alone does not make it gel, and that is said. */
    @Test
    void aThickSpreadOnAThinPlateIsToldOf() {
        WorkingWindow.Known thin = Joints.known(Joints.plate(WoodHeat.SPRUCE, 20, 0.3, 2.5));
        assertThat(thin.caveats().stream().map(GluingCaveat::text))
                .contains(
                        "Film and plate meet at 36.2 °C; from there only the air of the room cools the glue, slowly and by a "
                                + "number that was not measured.");
    }

    @Test
    void theBandRisesAndHoldsTheTypicalValue() {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            WindowSeconds seconds = Joints.known(random(random)).seconds();
            double low_s = number(seconds.low_s());
            double typical_s = number(seconds.typical_s());
            assertThat(low_s).as("seed %d", seed).isGreaterThanOrEqualTo(0).isLessThanOrEqualTo(typical_s);
            assertThat(typical_s).as("seed %d", seed).isLessThanOrEqualTo(number(seconds.high_s()));
        }
    }

    /** Warmer parts never give less time, by either model. */
    @Test
    void warmingThePartsGivesTime() {
        for (long seed = 0; seed < 100; seed++) {
            Spread spread = random(new SplittableRandom(seed));
            List<WorkingWindow.WarmedPart> parts = WorkingWindow.onParts(
                    spread, List.of(Temperature.ofCelsius(10), Temperature.ofCelsius(20), Temperature.ofCelsius(28)));
            double before_s = -1;
            for (WorkingWindow.WarmedPart part : parts) {
                double typical_s =
                        number(((WorkingWindow.Known) part.window()).seconds().typical_s());
                // where the two models meet they may differ by 0.3 °C, at most a few per cent of the window
                assertThat(typical_s * 1.05 + 0.01).as("seed %d", seed).isGreaterThanOrEqualTo(before_s);
                before_s = typical_s;
            }
        }
    }

    @Test
    void aClosedJointCoolsAsHalfTheFilm() {
        Spread open = Joints.thick(WoodHeat.SPRUCE, 20, 0.2);
        Spread closed = new Spread(
                open.glue(),
                open.part(),
                open.film(),
                0.5,
                open.wood(),
                true,
                open.gel(),
                Optional.empty(),
                open.room());
        assertThat(number(Joints.known(closed).seconds().typical_s())).isCloseTo(5.3, within(0.06));
    }

    @Test
    void glueThatIsColderThanItsGelPointHasNoTime() {
        Spread warm = Joints.thick(WoodHeat.SPRUCE, 20, 0.2);
        Spread cold = new Spread(
                Temperature.ofCelsius(31),
                warm.part(),
                warm.film(),
                0.5,
                warm.wood(),
                false,
                warm.gel(),
                Optional.empty(),
                warm.room());
        assertThat(Joints.known(cold).seconds().typical_s()).hasValue(0);
    }

    @Test
    void tooHotIsRefused() {
        Spread warm = Joints.thick(WoodHeat.SPRUCE, 20, 0.2);
        Spread hot = new Spread(
                Temperature.ofCelsius(70),
                warm.part(),
                warm.film(),
                0.5,
                warm.wood(),
                false,
                warm.gel(),
                Optional.empty(),
                warm.room());
        assertThat(WorkingWindow.of(hot))
                .isEqualTo(
                        new WorkingWindow.Refused(
                                List.of(
                                        new Problem(
                                                "/glue_C",
                                                70.0,
                                                "The glue is at 70.0 °C; above 65.6 °C hide glue breaks down. Let the pot cool to about 60 °C."))));
    }

    @Test
    void everyAnswerSaysThatGlueScaldsAndThatItIsGuidance() {
        for (Spread spread :
                List.of(Joints.thick(WoodHeat.SPRUCE, 20, 0.2), Joints.plate(WoodHeat.MAPLE, 12, 0.2, 2.5))) {
            assertThat(Joints.known(spread).caveats()).contains(new GluingCaveat.Scalds(), new GluingCaveat.LeftOut());
        }
        assertThat(Joints.known(Joints.thick(WoodHeat.SPRUCE, 12, 0.2)).caveats())
                .contains(new GluingCaveat.WarmTheParts());
    }

    private static double number(OptionalDouble seconds) {
        return seconds.orElse(Double.POSITIVE_INFINITY);
    }

    private static Spread random(SplittableRandom random) {
        double film_mm = random.nextDouble(0.02, 0.6);
        double wood_C = random.nextDouble(5, 40);
        WoodHeat wood = random.nextBoolean() ? WoodHeat.SPRUCE : WoodHeat.MAPLE;
        return random.nextBoolean()
                ? Joints.thick(wood, wood_C, film_mm)
                : new Spread(
                        Temperature.ofCelsius(random.nextDouble(30, 65)),
                        Temperature.ofCelsius(wood_C),
                        Length.ofMm(film_mm),
                        random.nextDouble(0.2, 1),
                        wood,
                        random.nextBoolean(),
                        Temperature.ofCelsius(32),
                        Optional.of(Length.ofMm(random.nextDouble(1, 15))),
                        Temperature.ofCelsius(20));
    }
}
