package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AirTest {
    @Test
    void theMoistureThatTheAirLeadsToCarriesItsUncertainty() {
        assertThat(new Air(20.0, 45.0).moistureWords()).isEqualTo("8.5 ± 0.5 %");
        assertThat(new Air(20.0, 45.0).moistureSentence())
                .isEqualTo("Wood settles at 8.5 ± 0.5 % moisture in this air.");
    }

    @Test
    void airThatIsHalfKnownOrOutsideTheCurveHasNone() {
        assertThat(new Air(20.0, null).moistureWords()).isEmpty();
        assertThat(new Air(null, 45.0).moistureSentence())
                .isEqualTo("With temperature and humidity, the moisture that wood settles at stands here.");
        assertThat(new Air(20.0, 99.0).moistureWords()).isEmpty();
        assertThat(new Air(20.0, 99.0).moistureSentence())
                .isEqualTo(
                        "The relative humidity is 99.0 %; the curve of wood moisture was checked from 5 to 90 % only. "
                                + "Give a relative humidity in that range.");
    }

    @Test
    void airIsWrittenWithItsUnits() {
        assertThat(new Air(20.5, 38.0).words()).isEqualTo("20.5\u00a0°C, 38\u00a0%\u00a0RH");
        assertThat(new Air(null, 38.0).words()).isEqualTo("38\u00a0%\u00a0RH");
        assertThat(Air.UNKNOWN.words()).isEmpty();
    }
}
