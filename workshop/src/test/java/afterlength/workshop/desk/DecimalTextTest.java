package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Both decimal signs read; what could be read two ways is not guessed at. */
class DecimalTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"12.5;12.5", "12,5;12.5", "'  7 ';7", "-0,25;-0.25", "−3;-3", ".5;0.5", "5.;5", "+2;2"})
    void readsWhatPeopleWrite(String text, double value) {
        assertThat(DecimalText.read(text)).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "12.5 mm", "1.234,5", "1,234.5", "1e3", "NaN", "Infinity", "0x10", "--1", "1 000", "١٢", ","
            })
    void refusesWhatIsNotOneNumber(String text) {
        assertThat(DecimalText.read(text)).isEmpty();
    }
}
