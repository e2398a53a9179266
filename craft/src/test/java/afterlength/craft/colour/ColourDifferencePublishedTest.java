package afterlength.craft.colour;

import static afterlength.craft.colour.ColourTable.lab;
import static afterlength.craft.colour.ColourTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class ColourDifferencePublishedTest {
    /** Sharma, Wu and Dalal 2005, table 1, printed to four decimals: all 34 pairs, both ways. */
    @Test
    void allPublishedPairsBothWays() throws IOException {
        var pairs = ColourTable.rows("ciede2000_sharma2005.csv");
        assertThat(pairs).hasSize(34);
        for (NamedCsvRecord pair : pairs) {
            Lab first = lab(pair, "L1", "a1", "b1");
            Lab second = lab(pair, "L2", "a2", "b2");
            assertThat(ColourDifference.of(first, second))
                    .as(pair.toString())
                    .isCloseTo(number(pair, "dE00"), within(1e-4));
            assertThat(ColourDifference.of(second, first))
                    .as(pair.toString())
                    .isCloseTo(number(pair, "dE00"), within(1e-4));
        }
    }

    /** Pair 14, whose hues are opposite to the last bit: the printed 4.8045, never 4.7461, both ways. */
    @Test
    void oppositeHuesAreTakenAsPrinted() {
        Lab first = new Lab(50, -0.001, 2.49);
        Lab second = new Lab(50, 0.001, -2.49);
        assertThat(ColourDifference.of(first, second)).isCloseTo(4.8045, within(1e-4));
        assertThat(ColourDifference.of(second, first)).isCloseTo(4.8045, within(1e-4));
    }

    /** 60 pairs near the colours of varnish from two general colour libraries; they print eight decimals. */
    @Test
    void pairsNearVarnishAsTwoLibrariesCountThem() throws IOException {
        for (NamedCsvRecord pair : ColourTable.rows("ref_de2000_pairs.csv")) {
            assertThat(ColourDifference.of(lab(pair, "L1", "a1", "b1"), lab(pair, "L2", "a2", "b2")))
                    .as(pair.toString())
                    .isCloseTo(number(pair, "dE00_culori"), within(1e-8));
        }
    }
}
