package afterlength.craft.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.wood.Cut;
import afterlength.craft.wood.OpenFaces;
import afterlength.craft.wood.PlateResponse;
import afterlength.craft.wood.WoodCaveat;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClimateStudyTest {
    private static final PlateResponse BELLY = PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.ONE);
    private static final int DAY_H = 24;

    /** Rows of docs/sources.md#logger-layouts with the moisture they were reckoned to; three decimals. */
    @ParameterizedTest
    @CsvSource({"23.06, 54.91, 9.995", "21.38, 55.14, 10.086", "21.21, 56.57, 10.339", "21.43, 56.20, 10.268"})
    void publishedRows(double t_C, double rh_pct, double moisture_pct) {
        AirRecord record = AirRecord.of(new long[] {0}, new float[] {(float) t_C}, new float[] {(float) rh_pct});
        assertThat(ClimateStudy.of(record, BELLY).equilibrium_pct().mean()).isCloseTo(moisture_pct, within(0.0006));
    }

    /** 55 → 35 % at 20 °C: after 24 h the plate has come from 10.1013 to 7.0670 %, as printed. */
    @Test
    void thePlateOfTheRecordIsThePrintedSeries() {
        ClimateStudy study = ClimateStudy.of(hourly(DAY_H + 1, n -> n == 0 ? 55 : 35), BELLY);
        assertThat(study.history().plate_pct(0)).isCloseTo(10.1013, within(0.00006));
        assertThat(study.history().plate_pct(24)).isCloseTo(7.0670, within(0.0006));
    }

    @Test
    void hoursOfAllBandsAreTheHoursOfTheRecord() {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            ClimateStudy study = ClimateStudy.of(hourly(200, n -> random.nextDouble(0, 100)), BELLY);
            assertThat(study.hours().values().stream()
                            .mapToDouble(hours -> hours)
                            .sum())
                    .as("seed %d", seed)
                    .isCloseTo(200, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, BELOW_25",
        "24.9, BELOW_25",
        "25, TO_35",
        "34.9, TO_35",
        "35, TO_40",
        "40, TO_60",
        "60, TO_60",
        "60.1, TO_65",
        "65, TO_65",
        "65.1, TO_75",
        "75, TO_75",
        "75.1, ABOVE_75",
        "100, ABOVE_75"
    })
    void bounds(double rh_pct, HumidityBand band) {
        assertThat(HumidityBand.of(rh_pct)).isEqualTo(band);
    }

    @Test
    void aFallThatMattersIsOneStepWithItsEnds() {
        ClimateStudy study = ClimateStudy.of(hourly(20 * DAY_H, n -> n < 10 * DAY_H ? 55 : 30), BELLY);
        assertThat(study.steps()).hasSize(1);
        MoistureStep step = study.steps().get(0);
        assertThat(step.from_pct()).isCloseTo(10.10, within(0.01));
        assertThat(step.to_pct()).isCloseTo(6.19, within(0.05));
        assertThat(step.from_s()).isBetween(9L * 86_400, 10L * 86_400);
    }

    /** A day's swing of the room does not reach the plate far enough to matter. */
    @Test
    void theDailySwingIsNoStep() {
        ClimateStudy study =
                ClimateStudy.of(hourly(30 * DAY_H, n -> 48 + 6 * Math.sin(2 * Math.PI * n / DAY_H)), BELLY);
        assertThat(study.steps()).isEmpty();
    }

    @Test
    void aRiseIsAStepToo() {
        ClimateStudy study = ClimateStudy.of(hourly(20 * DAY_H, n -> n < 10 * DAY_H ? 40 : 65), BELLY);
        assertThat(study.steps()).hasSize(1);
        assertThat(study.steps().get(0).change_pct()).isPositive();
    }

    @Test
    void gapsStayGapsAndThePlateStartsAnew() {
        long[] moment_s = new long[100];
        float[] t_C = new float[100];
        float[] rh_pct = new float[100];
        for (int n = 0; n < 100; n++) {
            moment_s[n] = n * 600L + (n < 50 ? 0 : 7200);
            t_C[n] = 20;
            rh_pct[n] = n < 50 ? 55 : 35;
        }
        ClimateStudy study = ClimateStudy.of(AirRecord.of(moment_s, t_C, rh_pct), BELLY);
        assertThat(study.history().gaps()).containsExactly(new Gap(49 * 600L, 50 * 600L + 7200));
        assertThat(study.history().plate_pct(50)).isEqualTo(study.history().equilibrium_pct(50));
        assertThat(study.history().sinceStart_h(50)).isZero();
        // a gap is no hours: 100 readings of ten minutes
        assertThat(study.hours().values().stream().mapToDouble(hours -> hours).sum())
                .isCloseTo(100 / 6.0, within(1e-9));
    }

    @Test
    void airOutsideTheCurveHasNoMoisture() {
        ClimateStudy study = ClimateStudy.of(hourly(10, n -> n == 5 ? 95 : 50), BELLY);
        assertThat(study.history().equilibrium_pct(5)).isNaN();
        assertThat(study.outsideCurve()).isEqualTo(1);
        assertThat(study.longestAbove75_h()).isEqualTo(1);
        assertThat(study.plate_pct().most()).isFinite();
    }

    @Test
    void everyStudySaysWhatItDoesNotKnow() {
        assertThat(ClimateStudy.of(hourly(3, n -> 50), BELLY).caveats())
                .anyMatch(caveat -> caveat instanceof WoodCaveat.StartUnknown)
                .contains(new WoodCaveat.CurveUncertainty(), new WoodCaveat.ShortestTime());
        assertThatThrownBy(() -> ClimateStudy.of(hourly(0, n -> 0), BELLY))
                .hasMessage("a record without readings means nothing");
    }

    private static AirRecord hourly(int count, IntToDoubleFunction humidity) {
        long[] moment_s = new long[count];
        float[] t_C = new float[count];
        float[] rh_pct = new float[count];
        for (int n = 0; n < count; n++) {
            moment_s[n] = n * 3600L;
            t_C[n] = 20;
            rh_pct[n] = (float) humidity.applyAsDouble(n);
        }
        return AirRecord.of(moment_s, t_C, rh_pct);
    }
}
