package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvCellTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "'quoted", "''"})
    void whatWouldActIsGuardedAndComesBackAsItWas(String words) {
        assertThat(CsvCell.guarded(words)).isEqualTo("'" + words);
        assertThat(CsvCell.plain(CsvCell.guarded(words))).isEqualTo(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "crack", "1 = 1", " =1", "3 ± 0.5", "–"})
    void otherWordsStayAsTheyAre(String words) {
        assertThat(CsvCell.guarded(words)).isEqualTo(words);
        assertThat(CsvCell.plain(words)).isEqualTo(words);
    }
}
