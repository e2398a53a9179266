package afterlength.start.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestWordTest {
    private static final List<String> KNOWN = List.of("temperature_C", "relative_humidity_pct", "from", "cut");

    @Test
    void theNearestKnownWordIsFound() {
        assertThat(NearestWord.find("temprature_c", KNOWN)).contains("temperature_C");
        assertThat(NearestWord.find("humidity_pct", KNOWN)).isEmpty();
        assertThat(NearestWord.find("form", KNOWN)).contains("from");
        assertThat(NearestWord.find("cat", List.of("dog"))).isEmpty();
        assertThat(NearestWord.find("a", List.of("b"))).isEmpty();
        assertThat(NearestWord.find("cuts", KNOWN)).contains("cut");
        assertThat(NearestWord.find("x".repeat(10_000), KNOWN)).isEmpty();
    }
}
