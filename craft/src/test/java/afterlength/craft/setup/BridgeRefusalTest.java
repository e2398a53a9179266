package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be a bridge is refused with every reason at once, each naming its place, the value, the range and what to do. */
class BridgeRefusalTest {
    private static List<Problem> problems(BridgeInputs inputs) {
        assertThat(Bridge.shape(inputs)).isInstanceOf(BridgeRefused.class);
        return BridgeChecks.problems(inputs);
    }

    private static void assertOnly(BridgeInputs inputs, String at, String message) {
        assertThat(problems(inputs)).singleElement().satisfies(problem -> {
            assertThat(problem.at()).isEqualTo(at);
            assertThat(problem.message()).isEqualTo(message);
        });
    }

    @Test
    void anInstrumentOnTheBenchHasNoProblems() {
        assertThat(BridgeChecks.problems(Bench.violin())).isEmpty();
        assertThat(BridgeChecks.problems(Bench.violinWithBody())).isEmpty();
        assertThat(BridgeChecks.problems(Bench.cello())).isEmpty();
    }

    @Test
    void everythingIsNamedAtOnceInTheOrderOfTheQuestion() {
        BridgeInputs wrong = new BridgeInputs(
                -328,
                new Board(0, Double.NaN, -1.0, new BassTreble(-0.5, 21)),
                new StringSpacing.ByCentres(0),
                new StringSpacing.Given(List.of(-17.0, Double.NaN, 5.0)),
                new BassTreble(-0.1, Double.POSITIVE_INFINITY),
                new BassTreble(51, Double.NaN),
                ClearanceConvention.SQUARE,
                0,
                1.5,
                new RadiusCrown(-42),
                List.of(
                        FittedString.ofDiameter("G", 0),
                        FittedString.ofTension("G", 0.8, -1),
                        new FittedString(" ", 0.7, new StringPull.DensityAndPitch(0, Double.NaN))),
                new Waist(0, -1));
        assertThat(problems(wrong))
                .extracting(Problem::at)
                .containsExactly(
                        "/speaking_length_mm",
                        "/board_length_mm",
                        "/board_radius_mm",
                        "/board_radius_nut_mm",
                        "/scoop_mm/bass",
                        "/scoop_mm/treble",
                        "/nut_clearance_mm/bass",
                        "/nut_clearance_mm/treble",
                        "/board_end_clearance_mm/bass",
                        "/board_end_clearance_mm/treble",
                        "/projection_mm",
                        "/groove_fraction",
                        "/crown/radius_mm",
                        "/waist_width_mm",
                        "/edge_drop_mm",
                        "/strings/0/diameter_mm",
                        "/strings/1/name",
                        "/strings/1/tension_N",
                        "/strings/2/name",
                        "/strings/2/linear_density_g_m",
                        "/strings/2/frequency_Hz",
                        "/nut_spacing_mm",
                        "/strings/1/bridge_y_mm");
    }

    @Test
    void aNumberThatIsNoneIsSaidSo() {
        assertOnly(
                Bench.violin().change().projection_mm(Double.NaN).done(),
                "/projection_mm",
                "The projection is not a number; it must be more than 0 mm and at most 500 mm. Measure at the bridge, from the"
                        + " belly to the underside of a straight edge laid along the board.");
    }

    @Test
    void theBoardEndsBeforeTheBridge() {
        assertOnly(
                Bench.violin().change().board(Board.ofOneRadius(330, 42)).done(),
                "/board_length_mm",
                "The board length is 330 mm; it must be at least a tenth of the speaking length, 32.8 mm, and less than all of it,"
                        + " 328 mm. Measure from the nut to the end of the board.");
    }

    @Test
    void aCrownBelowHalfTheChordReachesNotOverBothStrings() {
        assertOnly(
                Bench.violin().withCrown(new RadiusCrown(16)),
                "/crown/radius_mm",
                "The crown radius is 16 mm; it must be at least 16.8051 mm, half the distance between the outer wood points."
                        + " Give a larger radius or a narrower spacing at the bridge.");
    }

    @Test
    void stringsMustLieOverTheArcOfTheBoard() {
        BridgeInputs wide = Bench.violin()
                .change()
                .bridgeSpacing(new StringSpacing.ByCentres(120))
                .done();
        assertThat(problems(wide)).extracting(Problem::at).containsExactly("/bridge_spacing_mm", "/bridge_spacing_mm");
        assertThat(problems(wide).get(0).message())
                .isEqualTo(
                        "String G lies 50.8491 mm from the centre line at the board end; on a board of radius 42 mm it must be"
                                + " less than 47.5 mm. Check the string spacing and the board radius.");
    }

    @Test
    void threeToSixStrings() {
        assertOnly(
                Bench.violin()
                        .change()
                        .strings(Bench.violin().strings().subList(0, 2))
                        .done(),
                "/strings",
                "There are 2 strings; a bridge is drawn for 3 to 6. List every string from bass to treble.");
    }

    @Test
    void stringsKeepRoomBetweenEachOther() {
        assertOnly(
                Bench.violin()
                        .change()
                        .nutSpacing(new StringSpacing.ByCentres(2))
                        .done(),
                "/nut_spacing_mm",
                "The string spacing at the nut is 2 mm; strings of these diameters would touch. Give a wider spacing or check the"
                        + " diameters.");
        assertOnly(
                Bench.violin()
                        .change()
                        .bridgeSpacing(new StringSpacing.Given(List.of(-16.0, 6.0, 5.0, 16.0)))
                        .done(),
                "/strings/2/bridge_y_mm",
                "String A lies at the bridge at 5 mm, touching or passing string D at 6 mm; strings must follow from bass to"
                        + " treble with room between. Measure from the centre line, negative to the bass side.");
        assertOnly(
                Bench.violin()
                        .change()
                        .bridgeSpacing(new StringSpacing.Given(List.of(0.0, 11.0, 22.0, 33.0)))
                        .done(),
                "/strings/0/bridge_y_mm",
                "The outer string G lies at the bridge at 0 mm; the centre line must run between the outer strings. Measure from"
                        + " the centre line, negative to the bass side.");
    }

    @Test
    void aTemplateMustReachOverBothStrings() {
        TemplateCrown narrow =
                new TemplateCrown(List.of(new CrossPoint(0, 0), new CrossPoint(15, 3), new CrossPoint(30, 0)));
        assertOnly(
                Bench.violin().withCrown(narrow),
                "/crown/template_mm",
                "The template is 30 mm wide and cannot be laid on outer wood points 33.6102 mm apart; it must reach over both"
                        + " without overhanging. Read off a longer piece of its edge or give a narrower spacing at the bridge.");
    }

    @Test
    void theWoodStandsOverTheBelly() {
        BridgeInputs steep = Bench.violin()
                .change()
                .projection_mm(0.1)
                .boardEndClearance_mm(new BassTreble(0.5, 0.1))
                .done();
        assertThat(problems(steep)).extracting(Problem::at).containsExactly("/projection_mm");
    }
}
