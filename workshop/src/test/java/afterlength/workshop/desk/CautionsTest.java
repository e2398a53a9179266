package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hot glue, clamp | glue bar | HOT_GLUE",
                "cotton, extraction | solvent trial on hidden spot | SOLVENTS",
                "oil or spirit | clean, seal, polish bare neck | OILY_RAGS SOLVENTS",
                "uv, dark | ultraviolet look, findings marked | ULTRAVIOLET",
                "daylight, uv cabinet optional, dust free | one thin coat | ULTRAVIOLET",
                "plane, straight edge | plane, scrape, measure relief, polish | DUST",
                "files, hot glue | new nut, fit, grooves | HOT_GLUE DUST",
                "setter, mirror | fit soundpost | STRING_TENSION",
                "'' | tail gut, tailpiece, button, strings to half pitch | STRING_TENSION",
                "rule | to pitch, measure heights, settle | STRING_TENSION",
                "thin knife, warm water | take neck out | BLADE",
                "paper | photograph label, cover it | ''",
                "rule, callipers | measurements (body, stop, string length) | ''",
            })
    void aStepsWordsCallUpItsCautions(String needs, String name, String expected) {
        assertThat(String.join(
                        " ", Cautions.of(needs, name).stream().map(Enum::name).toList()))
                .isEqualTo(expected);
    }

    @Test
    void noCautionPromisesAnything() {
        for (Cautions caution : Cautions.values()) {
            assertThat(caution.text().toLowerCase(Locale.ROOT)).doesNotContain("safe", "guarantee");
        }
        assertThat(Cautions.FIRST_OF_ALL).contains("local rules and licensed practice come first");
    }
}
