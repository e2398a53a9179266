package afterlength.craft.setup;

import afterlength.craft.units.Length;
import java.util.List;

/** What a reader has to know beside a number: facts only, the sentence is made where it is shown. */
public sealed interface Caveat {
    /** A value most workshops would look at twice. */
    record OutsideCommonRange(SetupQuantity quantity, double value, CommonRange range) implements Caveat {}

    /** The projection is lower than common; the bridge comes out low. */
    record ProjectionLow(Length projection, CommonRange range, List<HeightCause> causes) implements Caveat {}

    /** The projection is higher than common; the bridge comes out high. */
    record ProjectionHigh(Length projection, CommonRange range, List<HeightCause> causes) implements Caveat {}

    /** No range common in the trade is known for an instrument of this speaking length. */
    record NoCommonRange(Length speakingLength) implements Caveat {}

    /**
     * Inner strings lie higher or lower over the board end than both outer ones: crown and board do not match.
     *
     * @param strings from bass to treble
     * @param clearances of these strings, in the same order
     */
    record InnerClearanceOutsideOuter(List<String> strings, List<Length> clearances, Length lower, Length upper)
            implements Caveat {
        public InnerClearanceOutsideOuter {
            strings = List.copyOf(strings);
            clearances = List.copyOf(clearances);
        }
    }

    /** An inner string would lie on or in the end of the board. */
    record StringTouchesBoard(String string, Length clearance) implements Caveat {}

    /** The crown is so tight that the bridge would be undercut below its lower outer string. */
    record CrownUndercut(Length radius, Length smallestUpright) implements Caveat {}

    /** A groove deeper than half the string holds it fast and buries it. */
    record DeepGroove(double grooveFraction) implements Caveat {}

    /** The treble string is wanted higher than the bass string; the two may have been exchanged. */
    record TrebleAboveBass(Length bass, Length treble) implements Caveat {}

    /** The scoop was not measured; stopped notes are reckoned on a board without any, so that they come out higher than they are. */
    record ScoopNotMeasured() implements Caveat {}

    /** Without the waist the outer strings have one limit only, and no clear angle. */
    record WaistNotMeasured() implements Caveat {}

    /** The bow lies over the board, which may be met before a neighbour and is not looked at. */
    record BowOverBoard(Length distance, Length boardEnd) implements Caveat {}

    /** The tension of a string is not known, so that even play was looked for with a bow that does not press. */
    record EvenPlayWithoutForce() implements Caveat {}
}
