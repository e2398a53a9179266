package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Half-times of docs/sources.md#spruce-diffusion for a plate on the quarter, 1.00e-10 m²/s; tolerances are half a last digit. */
class PlateResponsePublishedTest {
    @ParameterizedTest
    @CsvSource({
        "2.5, 51.2, 3.42, 14.7, 1.76, 7.04, 0.05",
        "3.0, 73.8, 4.92, 21.2, 2.53, 10.13, 0.06",
        "4.5, 166, 11.1, 47.7, 5.70, 22.8, 0.5"
    })
    void halfTimes(
            double mm,
            double both_min,
            double one_h,
            double ninety_h,
            double slowBoth_h,
            double slowOne_h,
            double minute) {
        PlateResponse both = PlateResponse.of(Length.ofMm(mm), Cut.QUARTER, OpenFaces.BOTH);
        PlateResponse one = PlateResponse.of(Length.ofMm(mm), Cut.QUARTER, OpenFaces.ONE);
        assertThat(both.half_h() * 60).isCloseTo(both_min, within(minute));
        assertThat(one.half_h()).isCloseTo(one_h, within(0.05));
        assertThat(one.nineTenths_h()).isCloseTo(ninety_h, within(0.06));
        assertThat(both.slow_h()).isCloseTo(slowBoth_h, within(0.006));
        assertThat(one.slow_h()).isCloseTo(slowOne_h, within(0.05));
    }

    /** The series itself gives the half and the nine tenths back; the constants are printed to six digits. */
    @Test
    void theSeriesAgreesWithItsHalfTimes() {
        for (Cut cut : Cut.values()) {
            PlateResponse plate = PlateResponse.of(Length.ofMm(3.1), cut, OpenFaces.ONE);
            assertThat(plate.partMade(plate.half_h())).isCloseTo(0.5, within(1e-5));
            assertThat(plate.partMade(plate.nineTenths_h())).isCloseTo(0.9, within(1e-5));
        }
    }

    @Test
    void theShortTimeFormMeetsTheSeriesWithoutAStep() {
        PlateResponse plate = PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.BOTH);
        double meet_h = 0.01 * 2.5e-3 * 2.5e-3 / 1e-10 / 3600;
        assertThat(plate.partMade(meet_h * 1.0000001)).isCloseTo(plate.partMade(meet_h * 0.9999999), within(1e-7));
        assertThat(plate.partMade(0)).isZero();
    }

    @Test
    void moreTimeMakesMoreOfTheChange() {
        PlateResponse plate = PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.ONE);
        SplittableRandom random = new SplittableRandom(1);
        for (int n = 0; n < 1000; n++) {
            double time_h = random.nextDouble(0, 60);
            assertThat(plate.partMade(time_h + 0.1))
                    .isGreaterThan(plate.partMade(time_h))
                    .isLessThanOrEqualTo(1);
        }
    }

    /** 20 °C, 55 → 35 %, one face, 2.5 mm, hourly: the printed row of the series; four decimals, τ itself printed as 7.04 h. */
    @Test
    void filteredSeries() {
        PlateFollower plate = new PlateFollower(PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.ONE));
        double now_pct = moisture_pct(35);
        assertThat(plate.start(moisture_pct(55))).isCloseTo(10.1013, within(0.00005));
        double[] printed = {1, 9.6858, 3, 9.0125, 6, 8.3014, 12, 7.5339, 24, 7.0670};
        int next = 0;
        for (int hour = 1; hour <= 24; hour++) {
            double plate_pct = plate.follow(now_pct, 1);
            if (hour == printed[next]) {
                assertThat(plate_pct).as("hour " + hour).isCloseTo(printed[next + 1], within(0.0006));
                next += 2;
            }
        }
    }

    /** Where the air stands still, ten steps of six minutes are one of an hour. */
    @Test
    void theFilterDoesNotDependOnTheInterval() {
        PlateResponse response = PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.ONE);
        PlateFollower coarse = new PlateFollower(response);
        PlateFollower fine = new PlateFollower(response);
        coarse.start(10);
        fine.start(10);
        double fine_pct = 0;
        for (int n = 0; n < 10; n++) {
            fine_pct = fine.follow(7, 0.1);
        }
        assertThat(fine_pct).isCloseTo(coarse.follow(7, 1), within(1e-12));
    }

    private static double moisture_pct(double rh_pct) {
        return Known.moisture(EquilibriumMoisture.of(Temperature.ofCelsius(20), RelativeHumidity.ofPct(rh_pct)))
                .moisture()
                .pct();
    }
}
