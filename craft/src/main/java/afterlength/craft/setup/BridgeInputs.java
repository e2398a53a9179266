package afterlength.craft.setup;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Everything measured and wished for, from which a bridge is drawn. Any number can stand here, even a wrong one, so that
 * {@link BridgeChecks} can name everything that is wrong at once; therefore these are plain millimetres and not {@code Length}.
 *
 * @param speakingLength_mm from nut to bridge, measured on the instrument
 * @param nutSpacing where the strings lie across at the nut
 * @param bridgeSpacing where they lie across at the bridge
 * @param nutClearance_mm underside of the string to the board at the nut; inner strings linear by string number
 * @param boardEndClearance_mm wanted at the board end
 * @param projection_mm height of the board line over the belly, at the bridge on the centre line
 * @param grooveFraction the wood of the crown stands this part of a string's diameter above the string's underside
 * @param strings from bass to treble
 * @param waist for the outer limits of the bow, or null when it was not measured
 */
public record BridgeInputs(
        double speakingLength_mm,
        Board board,
        StringSpacing nutSpacing,
        StringSpacing bridgeSpacing,
        BassTreble nutClearance_mm,
        BassTreble boardEndClearance_mm,
        ClearanceConvention clearanceConvention,
        double projection_mm,
        double grooveFraction,
        Crown crown,
        List<FittedString> strings,
        @Nullable Waist waist) {

    /** A groove a third of the string deep. Source: docs/sources.md#setup-common-practice. */
    public static final double USUAL_GROOVE_FRACTION = 1.0 / 3;

    public BridgeInputs {
        strings = List.copyOf(strings);
    }

    /** Tension of one string over this speaking length, empty when nothing is known of it. */
    OptionalDouble findTension_N(int string) {
        return strings.get(string).pull().findTension_N(speakingLength_mm);
    }

    boolean allTensionsKnown() {
        return strings.stream().noneMatch(string -> string.pull() instanceof StringPull.Unknown);
    }

    /** The same with single answers changed: {@code inputs.change().projection_mm(28).done()}. */
    public BridgeChange change() {
        return new BridgeChange(this);
    }

    public BridgeInputs withCrown(Crown other) {
        return change().crown(other).done();
    }
}
