package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.setup.Caveat;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.SetupQuantity;
import afterlength.craft.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class BridgeWordsTest {
    private static final CommonRange RANGE = new CommonRange(26, 28, "somewhere");

    private static void assertWords(Caveat caveat, String words) {
        assertThat(BridgeWords.of(caveat)).isEqualTo(words);
    }

    @Test
    void aValueOutsideTheCommonRangeIsAQuestionNotAFault() {
        assertWords(
                new Caveat.OutsideCommonRange(SetupQuantity.CROWN_RADIUS, 45, RANGE),
                "The radius of the crown of 45.0 mm is outside what is common (26.0 to 28.0 mm); look at it twice.");
        assertWords(
                new Caveat.OutsideCommonRange(SetupQuantity.STRING_ANGLE, 162, RANGE),
                "The string angle over the bridge of 162.0° is outside what is common (26.0 to 28.0°); look at it twice.");
    }

    @Test
    void aLowProjectionNamesItsCausesInTheOrderOfChecking() {
        assertWords(
                new Caveat.ProjectionLow(Length.ofMm(25), RANGE, HeightCause.listInOrderOfChecking()),
                "The projection of 25.0 mm is lower than what is common (26.0 to 28.0 mm), and the bridge with it. Check in "
                        + "this order: kind of strings, bridge warped or leaning, nut height, scoop, ruts or warp of the "
                        + "board, neck dropped, arch risen or sunk, open seams, season.");
        assertWords(
                new Caveat.ProjectionHigh(Length.ofMm(29), RANGE, List.of(HeightCause.SEASON)),
                "The projection of 29.0 mm is higher than what is common (26.0 to 28.0 mm), and the bridge with it. Check in "
                        + "this order: season.");
    }

    @Test
    void everyOtherCaveatIsAWholeSentence() {
        Length one = Length.ofMm(1);
        Length two = Length.ofMm(2);
        assertWords(
                new Caveat.NoCommonRange(Length.ofMm(309)),
                "For a speaking length of 309.0 mm no common range is known; compare with the instrument as it came.");
        assertWords(
                new Caveat.InnerClearanceOutsideOuter(List.of("D"), List.of(Length.ofMm(3)), one, two),
                "At the board end the D string comes to 3.0 mm, outside the two outer ones (1.0 to 2.0 mm): crown and board "
                        + "do not match.");
        assertWords(
                new Caveat.InnerClearanceOutsideOuter(
                        List.of("D", "A"), List.of(Length.ofMm(3), Length.ofMm(4)), one, two),
                "At the board end the D string comes to 3.0 mm, A to 4.0 mm, outside the two outer ones (1.0 to 2.0 mm): crown"
                        + " and board do not match.");
        assertWords(
                new Caveat.StringTouchesBoard("D", Length.ofMm(-0.2)),
                "The D string would lie on the end of the board (clearance −0.2 mm). Give more clearance or another crown.");
        assertWords(
                new Caveat.CrownUndercut(one, two),
                "A crown radius of 1.0 mm undercuts the bridge below its lower outer string; 2.0 mm or more leaves it "
                        + "upright.");
        assertWords(
                new Caveat.DeepGroove(0.7),
                "A groove 0.70 of the string deep holds the string fast; half or less lets it slide when tuned.");
        assertWords(
                new Caveat.TrebleAboveBass(one, two),
                "More clearance is wanted under the treble string (2.0 mm) than under the bass string (1.0 mm); were the "
                        + "two exchanged?");
    }

    @Test
    void theBowHasItsSentencesToo() {
        assertWords(
                new Caveat.ScoopNotMeasured(),
                "The scoop of the board was not measured; stopped strings are taken to lie on a board without one, and so come"
                        + " out higher than they are.");
        assertWords(
                new Caveat.WaistNotMeasured(),
                "The waist was not measured; on their outer sides the outer strings have no limit here.");
        assertWords(
                new Caveat.BowOverBoard(Length.ofMm(70), Length.ofMm(58)),
                "At 70.0 mm from the bridge the bow plays over the board, which ends 58.0 mm from it; whether it meets the board"
                        + " was not looked at.");
        assertWords(
                new Caveat.EvenPlayWithoutForce(),
                "The tension of a string is not known; even play was looked for with a bow that does not press.");
    }

    /** A caveat added in the craft must find its words here; this list and the tests above are then to grow. */
    @Test
    void theseAreAllTheCaveatsThereAre() {
        assertThat(Caveat.class.getPermittedSubclasses())
                .extracting(Class::getSimpleName)
                .containsExactlyInAnyOrder(
                        "OutsideCommonRange",
                        "ProjectionLow",
                        "ProjectionHigh",
                        "NoCommonRange",
                        "InnerClearanceOutsideOuter",
                        "StringTouchesBoard",
                        "CrownUndercut",
                        "DeepGroove",
                        "TrebleAboveBass",
                        "ScoopNotMeasured",
                        "WaistNotMeasured",
                        "BowOverBoard",
                        "EvenPlayWithoutForce");
    }
}
