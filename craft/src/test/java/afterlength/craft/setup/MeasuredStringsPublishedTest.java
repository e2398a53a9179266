package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/sources.md#measured-strings: tension, length and linear density were measured each for itself and must agree at A440. */
class MeasuredStringsPublishedTest {
    private record Measured(String set, String note, double tension_N, double length_mm, double linearDensity_g_m) {}

    private static List<Measured> strings() {
        try (InputStream table = Objects.requireNonNull(
                MeasuredStringsPublishedTest.class.getResourceAsStream("measured-strings.csv"))) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("instrument"))
                    .map(line -> read(line.split(",", -1)))
                    .toList();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Measured read(String[] cells) {
        return new Measured(
                cells[0] + " " + cells[1],
                cells[2],
                Double.parseDouble(cells[3]),
                Double.parseDouble(cells[4]),
                Double.parseDouble(cells[5]));
    }

    private static double frequency_Hz(Measured string) {
        return Pitch.find(string.note()).orElseThrow().frequency(440).hertz();
    }

    @ParameterizedTest
    @MethodSource("strings")
    void theTensionFollowsFromDensityAndPitch(Measured string) {
        double tension_N =
                StringMechanics.tension_N(string.linearDensity_g_m(), frequency_Hz(string), string.length_mm());
        // three figures printed, and strings measured a little off their note
        assertThat(tension_N / string.tension_N()).isCloseTo(1, within(0.025));
    }

    @ParameterizedTest
    @MethodSource("strings")
    void thePitchFollowsFromTensionAndDensity(Measured string) {
        double sounds_Hz =
                StringMechanics.frequency_Hz(string.tension_N(), string.linearDensity_g_m(), string.length_mm());
        assertThat(StringMechanics.cents(sounds_Hz, frequency_Hz(string))).isCloseTo(0, within(25.0));
    }

    /** The sums of the five violin sets, printed in docs/sources.md#measured-strings' own table as 217.5 to 258.2 N. */
    @Test
    void aWholeSetOnABridgeAt158DegreesPressesWith83To99Newton() {
        Map<String, Double> totals = strings().stream()
                .filter(string -> string.set().startsWith("violin"))
                .collect(Collectors.groupingBy(Measured::set, Collectors.summingDouble(Measured::tension_N)));
        assertThat(totals.values())
                .hasSize(5)
                .allSatisfy(total_N -> assertThat(total_N).isBetween(217.4, 258.3));
        assertThat(totals.values())
                .allSatisfy(total_N ->
                        assertThat(StringMechanics.downforce_N(total_N, 158)).isBetween(82.9, 99.0));
    }
}
