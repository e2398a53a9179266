package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.CrossPoint;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crowns pasted as a path: lines and curves become points, and what cannot be read says why. */
class SvgPathTest {
    @Test
    void linesLargeAndSmallGiveTheSamePoints() {
        List<CrossPoint> points =
                List.of(new CrossPoint(0, -5), new CrossPoint(10, -2), new CrossPoint(20, -2), new CrossPoint(20, -6));
        assertThat(TemplateText.read("M0,5 L10 2 H20 V6").points()).isEqualTo(points);
        assertThat(TemplateText.read("m0,5 l10-3 h10 v4").points()).isEqualTo(points);
        assertThat(TemplateText.read("M0,5 10 2 20 2 20 6").points()).isEqualTo(points);
    }

    @Test
    void aQuadraticCurvePassesItsMiddle() {
        List<CrossPoint> points =
                TemplateText.read("<path d='M -20 0 Q 0 -10 20 0'/>").points();
        assertThat(points).hasSize(17).contains(new CrossPoint(0, 5));
    }

    /** The usual four-point form of a quarter circle keeps to the circle within 0.03 % of its radius. */
    @Test
    void aCubicCurveKeepsToItsCircle() {
        List<CrossPoint> points = TemplateText.read(
                        "<svg><path fill='none' d='M-42 0C-42-23.196-23.196-42 0-42'/></svg>")
                .points();
        assertThat(points)
                .hasSize(17)
                .allSatisfy(point ->
                        assertThat(Math.hypot(point.y_mm(), point.z_mm())).isEqualTo(42, within(0.013)));
    }

    @Test
    void aClosedOutlineGivesItsUpperEdgeFromBassToTreble() {
        assertThat(TemplateText.read("M20 0 L10 -6 L0 -8 L-10 -6 L-20 0 L-15 20 L15 20 Z")
                        .points())
                .containsExactly(
                        new CrossPoint(-20, 0),
                        new CrossPoint(-10, 6),
                        new CrossPoint(0, 8),
                        new CrossPoint(10, 6),
                        new CrossPoint(20, 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "M0 0 A5 5 0 0 1 10 0|The path has the command A; only M, L, H, V, C, Q and Z are read. Let the drawing program turn it into lines and plain curves.",
                "M0 0 L10|After the command L the path has 1 number; they come in groups of 2. A number is missing or too many.",
                "M0 0 L10 0 M20 0 L30 0|The path is made of more than one line; the crown is one. Paste that one alone.",
                "M0 0 L10 %|The path holds “%”, which no path has. Paste it anew.",
                "M0 0|The path has no line in it; it needs at least two points.",
                "<circle r='5'/>|The drawing has no path: d=\"…\" was looked for and not found. Paste the <path …/> of the crown.",
                "<path d='M0 0L1 1'/><path d='M0 0L1 1'/>|The drawing has more than one path; which of them is the crown cannot be told. Paste that one alone.",
            })
    void whatCannotBeReadSaysWhy(String typed, String problem) {
        assertThat(TemplateText.read(typed)).isEqualTo(new TemplateText(List.of(), problem));
    }

    @Test
    void pointsAreReadWithEitherDecimalSignAndAHeading() {
        List<CrossPoint> points = List.of(new CrossPoint(-16.5, 2.4), new CrossPoint(0, 5));
        assertThat(TemplateText.read("across; up\n-16,5; 2,4\n0; 5").points()).isEqualTo(points);
        assertThat(TemplateText.read("y,z\r\n-16.5,2.4\r\n\r\n0,5\r\n").points())
                .isEqualTo(points);
        assertThat(TemplateText.read("−16.5 2.4\n0\t5").points()).isEqualTo(points);
        assertThat(TemplateText.read("-16,5, 2,4\n0, 5").points()).isEqualTo(points);
    }

    @Test
    void aLineThatIsNoPointIsNamed() {
        assertThat(TemplateText.read("-16.5; 2.4\n3; 4; 5").problem())
                .isEqualTo(
                        "Line 2 of the template is “3; 4; 5”; it must be two numbers in millimetres, across and up, such as"
                                + " −16.5; 2.4. Write it anew.");
    }

    @Test
    void pointsThatAreWrittenAreReadBack() {
        List<CrossPoint> points = List.of(new CrossPoint(-16.52, 2.4), new CrossPoint(0, 5));
        assertThat(TemplateText.read(TemplateText.written(points)).points()).isEqualTo(points);
    }
}
