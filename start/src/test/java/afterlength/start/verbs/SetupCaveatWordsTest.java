package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.setup.Caveat;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.SetupQuantity;
import afterlength.craft.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SetupCaveatWordsTest {
    private static final CommonRange COMMON = new CommonRange(26, 28, "a source");

    @Test
    void everyCaveatHasItsSentence() {
        Map<Caveat, String> sentences = sentences();
        sentences.forEach(
                (caveat, sentence) -> assertThat(SetupCaveatWords.of(caveat)).isEqualTo(sentence));
        assertThat(sentences.keySet())
                .extracting(Object::getClass)
                .containsExactlyInAnyOrder(Caveat.class.getPermittedSubclasses());
    }

    private static Map<Caveat, String> sentences() {
        Map<Caveat, String> sentences = new LinkedHashMap<>();
        sentences.put(
                new Caveat.OutsideCommonRange(SetupQuantity.BRIDGE_SPACING, 36, new CommonRange(33, 34.5, "a source")),
                "The string spacing at the bridge is 36 mm; common is 33 to 34.5 mm.");
        sentences.put(
                new Caveat.ProjectionLow(Length.ofMm(25), COMMON, HeightCause.listInOrderOfChecking()),
                "The projection of 25 mm is low; common is 26 to 28 mm. Look in this order at: string type, bridge warped or"
                        + " leaning, nut height, board scoop ruts or warp, neck drop, arch risen or sunk, open seams, season.");
        sentences.put(
                new Caveat.ProjectionHigh(Length.ofMm(29), COMMON, List.of(HeightCause.SEASON)),
                "The projection of 29 mm is high; common is 26 to 28 mm. Look in this order at: season.");
        sentences.put(
                new Caveat.NoCommonRange(Length.ofMm(280)),
                "No common range was found for a speaking length of 280 mm; nothing was compared with what is usual.");
        sentences.put(
                new Caveat.InnerClearanceOutsideOuter("D", Length.ofMm(6), Length.ofMm(3.5), Length.ofMm(5.5)),
                "String D lies 6 mm over the board end, outside the 3.5 to 5.5 mm of the outer strings: crown and board do not"
                        + " match.");
        sentences.put(
                new Caveat.StringTouchesBoard("A", Length.ofMm(-0.204)),
                "String A would touch the end of the board: its clearance there is -0.2 mm.");
        sentences.put(
                new Caveat.CrownUndercut(Length.ofMm(17), Length.ofMm(18.256)),
                "With a crown radius of 17 mm the bridge would be undercut below its lower outer string; from 18.26 mm on it is"
                        + " not.");
        sentences.put(
                new Caveat.DeepGroove(0.7),
                "A groove of 0.7 of the string's diameter is deeper than half the string: it is held fast and buried.");
        sentences.put(
                new Caveat.TrebleAboveBass(Length.ofMm(4), Length.ofMm(5)),
                "The treble string is wanted higher over the board end (5 mm) than the bass string (4 mm); the two may have been"
                        + " exchanged.");
        sentences.put(
                new Caveat.ScoopNotMeasured(),
                "The scoop of the board was not measured; stopped strings are taken to lie on a straight board.");
        sentences.put(
                new Caveat.WaistNotMeasured(),
                "The waist was not measured; on their outer sides the outer strings have no limit here.");
        sentences.put(
                new Caveat.BowOverBoard(Length.ofMm(70), Length.ofMm(58)),
                "At 70 mm from the bridge the bow plays over the board, which ends 58 mm from it; that the bow may touch the board"
                        + " is not reckoned.");
        return sentences;
    }
}
