package afterlength.start.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {
    @ParameterizedTest
    @CsvSource({"1.00005, 1", "1.00015, 1.0002", "-0.00001, 0", "100, 100", "1e7, 10000000", "0.1, 0.1", "-2.5, -2.5"})
    void fourDecimalsAndNoExponent(double value, String printed) {
        assertThat(Figure.rounded(value).toPlainString()).isEqualTo(printed);
    }

    @Test
    void whatIsNotANumberIsNeverPrinted() {
        assertThatThrownBy(() -> Figure.rounded(Double.NaN))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("an answer holds NaN, which is not a number that can be printed");
    }

    @Test
    void anAnswerIsWrittenInTheOrderItWasMade() {
        AnswerDocument answer = new AnswerDocument()
                .put("b_mm", 100)
                .put("a_mm", Optional.<Double>empty(), number -> number)
                .put("name", "Größe \ud800")
                .putObjects("parts", List.of(new AnswerDocument().put("c", 0.12345)))
                .putTexts("caveats", List.of());
        assertThat(new Reply.Answered(answer).json()).isEqualTo("""
                        {
                          "b_mm": 100,
                          "a_mm": null,
                          "name": "Größe \ud800",
                          "parts": [
                            {
                              "c": 0.1234
                            }
                          ],
                          "caveats": []
                        }
                        """);
    }
}
