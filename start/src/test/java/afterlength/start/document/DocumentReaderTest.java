package afterlength.start.document;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentReaderTest {
    private static final String LOOK =
            " on. Look there for a missing comma, quotation mark or bracket; a number is written like 12.5, without unit, and NaN"
                    + " is not a number.";

    @Test
    void everyProblemIsFoundInOneReading() {
        DocumentReader document = read("""
                {"width_mm": -3, "height_mm": "20", "naem": "x", "cut": "quartr", "part": {"a/b": null}, "list": [1, 2, 3]}
                """);
        document.get("width_mm").asNumber(Range.positive(100, "mm").because("the width of the bench"));
        document.get("height_mm").asNumber(Range.between(1, 2, "mm"));
        document.get("depth_mm").asNumber(Range.any("mm"));
        document.find("name").ifPresent(DocumentValue::asText);
        document.get("cut").asOneOf(List.of("quarter", "slab"), word -> word);
        document.get("part").asObject().get("a/b").asObject().get("not complained of");
        document.get("list").asList(1, 2);
        assertThat(document.problems())
                .containsExactly(
                        problem(
                                "/width_mm",
                                -3,
                                "width_mm is -3 mm; give more than 0 and at most 100 mm, the width of the bench."),
                        problem(
                                "/height_mm",
                                "20",
                                "height_mm is the text \"20\"; a number is wanted, such as 12.5, without quotation marks and"
                                        + " without unit."),
                        problem("/depth_mm", null, "depth_mm is missing. Add the key \"depth_mm\" and its value."),
                        problem(
                                "/cut",
                                "quartr",
                                "cut is the text \"quartr\"; give one of: quarter, slab. Did you mean \"quarter\"?"),
                        problem("/part/a~1b", null, "part/a/b is null; an object in braces is wanted."),
                        problem(
                                "/list",
                                List.of(1, 2, 3),
                                "list is a list; a list of 1 to 2 is wanted, this one has 3."),
                        problem(
                                "/naem",
                                "x",
                                "The document has no key \"naem\". Did you mean \"name\"? Keys known here: width_mm, height_mm,"
                                        + " depth_mm, name, cut, part, list."));
    }

    @Test
    void whatIsWellIsReadAndNothingIsSaid() {
        DocumentReader document = read("{\"a\": 1.5, \"b\": [{\"c\": \" Slab \"}], \"d\": 12345678901234567890}");
        assertThat(document.get("a").asNumber(Range.between(1.5, 1.5, ""))).isEqualTo(1.5);
        assertThat(document.get("b").asList(1, 1).get(0).asObject().get("c").asOneOf(List.of("slab"), word -> word))
                .contains("slab");
        assertThat(document.get("d").asNumber(Range.any(""))).isEqualTo(1.2345678901234567E19);
        assertThat(document.find("e")).isEmpty();
        assertThat(document.problems()).isEmpty();
    }

    @Test
    void aRefusedNumberIsNotANumber() {
        DocumentReader document = read("{\"a\": 3, \"b\": 1e999, \"c\": -1e-300}");
        assertThat(document.get("a").asNumber(Range.between(0, 1, ""))).isNaN();
        assertThat(document.get("b").asNumber(Range.any(""))).isNaN();
        assertThat(document.get("c").asNumber(Range.any("mm"))).isNaN();
        assertThat(document.problems())
                .containsExactly(
                        problem("/b", "1e999", "b is too large a number to count with. Give a number below 1e300."),
                        problem("/a", 3, "a is 3; give 0 to 1."),
                        problem(
                                "/c",
                                -1e-300,
                                "c is -1.0E-300 mm, which is nearer to zero than any measure; give 0 or a number of 1e-9 or"
                                        + " more."));
    }

    @Test
    void aKeyGivenTwiceIsRefused() {
        DocumentReader document = read("{\"a\": {\"b\": 1, \"b\": 2}}");
        document.get("a").asObject().get("b").asNumber(Range.any(""));
        assertThat(document.problems())
                .containsExactly(problem("/a/b", 2, "a/b is given more than once. Give it once."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{|line 1, column 2",
                "{\"a\": NaN}|line 1, column 10",
                "{\"a\": 01}|line 1, column 8",
                "{'a': 1}|line 1, column 2",
                "{\"a\": 1,}|line 1, column 9",
                "{\"a\": \"open|line 1, column 12"
            })
    void whatIsNotJsonIsRefusedAtItsPlace(String text, String place) {
        DocumentReader document = read(text);
        document.get("never complained of");
        assertThat(document.problems())
                .containsExactly(problem("", null, "The document is not JSON from " + place + LOOK));
    }

    @Test
    void otherTextsThatAreNoQuestion() {
        assertRefused("", null, "The document is empty. Give one JSON object in braces.");
        assertRefused("null", null, "The document is null; an object in braces is wanted.");
        assertRefused("[1]", List.of(1), "The document is a list; an object in braces is wanted.");
        assertRefused("{} x", null, "The document is not JSON from line 1, column 4" + LOOK);
        assertRefused(
                "{} {}",
                null,
                "After the end of the document more text begins at line 1, column 4. Give one document and nothing behind it.");
        assertRefused(
                "[".repeat(100_000),
                null,
                "The document is nested more than 32 deep. Give at most 32 brackets and braces inside each other.");
    }

    @ParameterizedTest
    @ValueSource(ints = {0xff, 0xc3, 0x80})
    void brokenUtf8IsRefused(int broken) {
        DocumentReader document = DocumentReader.of(new byte[] {'{', '"', (byte) broken, '"', '}'});
        assertThat(document.problems())
                .containsExactly(
                        problem("", null, "The document is not text in UTF-8. Save it as UTF-8 and send it again."));
    }

    @Test
    void aVeryLongNumberIsRefused() {
        assertRefused(
                "{\"a\": " + "9".repeat(2000) + "}",
                null,
                "The document holds a number, a key or a text too long to read. Give numbers of at most"
                        + " 1000 digits, and short names.");
        assertThat(read("{\"a\": 1e" + "9".repeat(500) + "}").problems()).isNotEmpty();
    }

    @Test
    void underARefusedPlaceNothingFurtherIsRefused() {
        DocumentReader document = read("{\"a\": 1, \"ab\": 2}");
        document.get("a").asObject();
        document.get("ab").asNumber(Range.any(""));
        document.refuse("/a/b", Double.NaN, "not heard");
        document.refuse("/ab", 2, "heard");
        assertThat(document.problems())
                .containsExactly(
                        problem("/a", 1, "a is the number 1; an object in braces is wanted."),
                        problem("/ab", 2, "heard"));
    }

    private static void assertRefused(String text, @Nullable Object value, String message) {
        assertThat(read(text).problems()).containsExactly(problem("", value, message));
    }

    private static DocumentReader read(String text) {
        return DocumentReader.of(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Problem problem(String at, @Nullable Object value, String message) {
        return new Problem(at, value, message);
    }
}
