package afterlength.craft.setup;

import java.util.stream.IntStream;

/**
 * Where the strings run before the crown is known: places across at nut and bridge, undersides at the nut, and the two outer
 * strings in full. Each string is a straight line; the outer ones pass the nut and the board end with the wanted clearance and
 * are carried on to the bridge: {@code zB = zN + (zF - zN)·L/F}.
 *
 * <p>Built only from inputs whose single values are possible.
 */
final class StringLayout {
    private static final double ROUNDING_mm = 1e-9;

    private final BridgeInputs inputs;
    private final double[] nutY_mm;
    private final double[] bridgeY_mm;

    StringLayout(BridgeInputs inputs) {
        this.inputs = inputs;
        nutY_mm = inputs.nutSpacing().places_mm(inputs.strings());
        bridgeY_mm = inputs.bridgeSpacing().places_mm(inputs.strings());
    }

    int count() {
        return nutY_mm.length;
    }

    double nutY_mm(int string) {
        return nutY_mm[string];
    }

    double bridgeY_mm(int string) {
        return bridgeY_mm[string];
    }

    double boardEndY_mm(int string) {
        return nutY_mm[string] + (bridgeY_mm[string] - nutY_mm[string]) * endFraction();
    }

    private double endFraction() {
        return inputs.board().length_mm() / inputs.speakingLength_mm();
    }

    double nutClearance_mm(int string) {
        return inputs.nutClearance_mm().ofString_mm(string, count());
    }

    double nutUnderside_mm(int string) {
        return inputs.clearanceConvention()
                .underside_mm(inputs.board().radiusAtNut_mm(), nutY_mm[string], nutClearance_mm(string));
    }

    CrossPoint bassWood() {
        return outerWood(0, inputs.boardEndClearance_mm().bass_mm());
    }

    CrossPoint trebleWood() {
        return outerWood(count() - 1, inputs.boardEndClearance_mm().treble_mm());
    }

    private CrossPoint outerWood(int string, double clearance_mm) {
        double underside_mm = bridgeUnderside_mm(string, clearance_mm);
        return new CrossPoint(bridgeY_mm[string], underside_mm + groove_mm(string));
    }

    /** Underside at the bridge of a string that passes the board end with this clearance. */
    double bridgeUnderside_mm(int string, double clearance_mm) {
        double nut_mm = nutUnderside_mm(string);
        double end_mm = inputs.clearanceConvention()
                .underside_mm(inputs.board().radius_mm(), boardEndY_mm(string), clearance_mm);
        return nut_mm + (end_mm - nut_mm) / endFraction();
    }

    /** The other way: clearance at the board end of a string whose underside at the bridge is known. */
    double boardEndClearance_mm(int string, double bridgeUnderside_mm) {
        double nut_mm = nutUnderside_mm(string);
        double end_mm = nut_mm + (bridgeUnderside_mm - nut_mm) * endFraction();
        return inputs.clearanceConvention().clearance_mm(inputs.board().radius_mm(), boardEndY_mm(string), end_mm);
    }

    /** How far the wood stands above the underside of the string. */
    double groove_mm(int string) {
        return inputs.grooveFraction() * inputs.strings().get(string).diameter_mm();
    }

    /** All strings seated on a crown, for trying out where they can be played. */
    StringRun[] runsOn(CrownCurve crown) {
        return IntStream.range(0, count())
                .mapToObj(i -> StringRun.of(inputs, this, i, crown.height_mm(bridgeY_mm(i)) - groove_mm(i)))
                .toArray(StringRun[]::new);
    }

    /** Whether every inner clearance at the board end lies between the two outer ones, but for rounding. */
    boolean keepsBetweenOuter(StringRun[] runs) {
        BassTreble wanted_mm = inputs.boardEndClearance_mm();
        return IntStream.range(1, count() - 1)
                .mapToDouble(i -> boardEndClearance_mm(i, runs[i].bridgeUnderside_mm()))
                .allMatch(clearance_mm -> clearance_mm >= wanted_mm.smaller_mm() - ROUNDING_mm
                        && clearance_mm <= wanted_mm.larger_mm() + ROUNDING_mm);
    }
}
