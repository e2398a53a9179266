package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed numbers of string mechanics; the source stands beside each value. */
class StringMechanicsPublishedTest {
    private static final double POUND_N = 4.4482216;
    private static final double GRAVITY_m_s2 = 9.80665;

    /** docs/sources.md#leancrew-problem: 12.5 inch string drawn 0.25 inch aside at its middle, 20 lb of four strings: 1.15 lb. */
    @Test
    void drawingAStringAsideTakesThePrintedForce() {
        double inch_mm = 25.4;
        double tension_N = 5 * POUND_N / StringMechanics.downforce_N(1, 159.99);
        assertThat(tension_N / POUND_N).isCloseTo(14.39, within(0.01));
        double perNewton_mm = StringMechanics.deflection_mm(1, 6.25 * inch_mm, 12.5 * inch_mm, tension_N);
        assertThat(0.25 * inch_mm / perNewton_mm / POUND_N).isCloseTo(1.15, within(0.005));
    }

    /** docs/sources.md#satoh-gut: f L d = 49 √k with kilograms; 440 Hz, 0.5 m and 5 kg give 0.50 mm. */
    @Test
    void aGutStringGetsThePrintedDiameter() {
        double tension_N = 5 * GRAVITY_m_s2;
        double density_g_m = StringMechanics.linearDensity_g_m(tension_N, 440, 500);
        double diameter_mm = Math.sqrt(density_g_m / StringMechanics.solidLinearDensity_g_m(1, 1300));
        assertThat(diameter_mm).isCloseTo(0.50, within(0.005));
        assertThat(440 * 0.5 * diameter_mm).isCloseTo(49 * Math.sqrt(5), within(0.02));
    }

    /** docs/sources.md#equal-tension-article: T = f² L² d² · 1.3/3183 "kg" holds only with a gravity of 10: two in a hundred low. */
    @Test
    void aPrintedFormulaForKilogramsIsTwoPerCentLow() {
        double tension_kgf =
                StringMechanics.tension_N(StringMechanics.solidLinearDensity_g_m(0.7, 1300), 440, 328) / GRAVITY_m_s2;
        double printed_kg = Math.pow(440 * 0.328 * 0.7, 2) * 1.3 / 3183;
        assertThat(printed_kg / tension_kgf).isCloseTo(GRAVITY_m_s2 / 10, within(0.0005));
    }

    /** docs/sources.md#measured-strings: violin II, G: 0.321 m, 3.86 g/m, 60.9 N; 196.0 Hz, three cents flat of it. */
    @Test
    void aMeasuredGSoundsThreeCentsFlat() {
        double sounds_Hz = StringMechanics.frequency_Hz(60.9, 3.86, 321);
        assertThat(sounds_Hz).isCloseTo(195.65, within(0.005));
        assertThat(StringMechanics.cents(sounds_Hz, 196.0)).isCloseTo(-3, within(0.5));
    }

    /** docs/sources.md#maron-strings: K = π L² f² = k · 10⁴ (the page slips in the sign of the exponent). */
    @ParameterizedTest
    @CsvSource({"320, 195.6, 1.231", "388, 130.4, 0.804", "690, 65.2, 0.636", "1060, 41.2, 0.599"})
    void theConstantOfFourPrintedStringsComesOut(double length_mm, double frequency_Hz, double printed) {
        // a solid string of density 1 and diameter 1 m has tension π L² f²
        double tension_N = StringMechanics.tension_N(
                StringMechanics.solidLinearDensity_g_m(1000, 1) * 1e-6, frequency_Hz, length_mm);
        assertThat(tension_N / 1e4 * 1e6).isCloseTo(printed, within(0.0006));
    }

    /** docs/sources.md#setup-worked-example, table of F/T by string angle. */
    @ParameterizedTest
    @CsvSource({"150, 0.518", "153, 0.467", "154.32, 0.444", "157, 0.399", "158, 0.382", "159.5, 0.356", "160, 0.347"})
    void downforceByStringAngle(double stringAngle_deg, double printed) {
        assertThat(StringMechanics.downforce_N(1, stringAngle_deg)).isCloseTo(printed, within(0.0006));
    }

    /** docs/sources.md#bishopp-in-hart: 18 lb of tension press with 8 lb; inner strings share 2/3 and 1/3. */
    @Test
    void bishoppsAngleAndHisShares() {
        assertThat(StringMechanics.downforce_N(18, 154.32)).isCloseTo(8, within(0.005));
        assertThat(StringMechanics.trebleShare(16.75 / 3, 16.75)).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(StringMechanics.trebleShare(-16.75 / 3, 16.75)).isCloseTo(1.0 / 3, within(1e-12));
    }

    /** docs/sources.md#setup-worked-example: 55 N, 328 mm, bow at 30 mm: half a millimetre to the newton. */
    @Test
    void theBowPressesAStringByHalfAMillimetreToTheNewton() {
        assertThat(StringMechanics.deflection_mm(1, 30, 328, 55)).isCloseTo(0.50, within(0.005));
    }

    /** docs/sources.md#setup-worked-example: steel E 0.25 mm, 75 N, clearance 2.4 mm at the octave: 12 cents. */
    @Test
    void aSteelEIsStoppedAtMostTwelveCentsSharp() {
        double stiffness_N = StoppedSharpening.solidStiffness_N(0.25, 200);
        assertThat(StoppedSharpening.atMost_cents(328, 164, 2.4, stiffness_N, 75))
                .isCloseTo(12, within(0.5));
    }

    /** docs/sources.md#after-length-rule: 54.166 and 52.585 for 325 mm, cut and not rounded in print. */
    @Test
    void twoRulesForTheAfterLength() {
        AfterLength rules = AfterLength.of(Length.ofMm(325));
        assertThat(rules.sixth().mm()).isCloseTo(54.166, within(0.001));
        assertThat(rules.golden().mm()).isCloseTo(52.585, within(0.0005));
    }
}
