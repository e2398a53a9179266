package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.geometry.InstrumentShape;
import java.util.Arrays;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class InstrumentDrawingPropertyTest {
    static Stream<Arguments> drawings() {
        return Stream.of(
                        InstrumentShape.violin(),
                        InstrumentShape.viola(),
                        InstrumentShape.cello(),
                        InstrumentShape.bass())
                .flatMap(shape -> Arrays.stream(InstrumentView.values()).map(view -> Arguments.of(shape, view)));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void isInkInTheColourOfTheTextAndNothingElse(InstrumentShape instrument, InstrumentView view) {
        Element svg = parsed(InstrumentDrawing.decoration(instrument, view));
        assertThat(svg.select("path"))
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.attr("fill")).isEqualTo("currentColor"));
        assertThat(svg.select("[style], [stroke], script, image, [id]")).isEmpty();
        assertThat(svg.html()).doesNotContain("NaN");
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void viewBoxHoldsTheInstrumentInMillimetres(InstrumentShape instrument, InstrumentView view) {
        String[] box = parsed(InstrumentDrawing.decoration(instrument, view))
                .attr("viewBox")
                .split(" ", -1);
        double least_mm = view == InstrumentView.SCROLL
                ? instrument.fittings().head_mm()
                : instrument.body().length_mm() + instrument.fittings().neck_mm();
        assertThat(Double.parseDouble(box[3])).isBetween(least_mm, least_mm * 1.6);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void staysLightEnoughForAPage(InstrumentShape instrument, InstrumentView view) {
        assertThat(InstrumentDrawing.decoration(instrument, view).length()).isLessThan(90_000);
    }

    @Test
    void titleIsReadAloudAndKeepsItsSigns() {
        Element svg = parsed(
                InstrumentDrawing.titled(InstrumentShape.viola(), InstrumentView.FRONT, "Viola <front> & strings"));
        assertThat(svg.attr("role")).isEqualTo("img");
        assertThat(svg.select("title").text()).isEqualTo("Viola <front> & strings");
    }

    @Test
    void decorationIsSkippedWhenThePageIsReadAloud() {
        Element svg = parsed(InstrumentDrawing.decoration(InstrumentShape.viola(), InstrumentView.BACK));
        assertThat(svg.attr("aria-hidden")).isEqualTo("true");
    }

    @Test
    void numbersAreWrittenAsShortAsTheyGo() {
        assertThat(PathText.number(120)).isEqualTo("1.2");
        assertThat(PathText.number(-5)).isEqualTo("-.05");
        assertThat(PathText.number(1700)).isEqualTo("17");
        assertThat(PathText.number(0)).isEqualTo("0");
    }

    private static Element parsed(String svg) {
        return Jsoup.parse(svg, Parser.xmlParser()).child(0);
    }
}
