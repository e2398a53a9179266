package afterlength.craft.setup;

import afterlength.craft.units.Length;
import afterlength.craft.units.Problem;
import java.util.List;
import java.util.stream.IntStream;

/**
 * From what was measured to the bridge to cut. The two outer strings are straight lines from the nut past the board end, with
 * the clearance wanted there, to the bridge. Their wood points (underside and part of the diameter, the groove) carry the crown;
 * the inner strings sit on it, and their clearance at the board end follows by running the same line back.
 *
 * <p>Valid for three to six strings on a board of circular section. Left out: the bending of a stiff string at nut and bridge,
 * and the slope of board line against body (see {@link BridgeShape}).
 */
public final class Bridge {
    private final BridgeInputs inputs;
    private final StringLayout layout;
    private final CrownCurve crown;

    private Bridge(BridgeInputs inputs) {
        this.inputs = inputs;
        layout = new StringLayout(inputs);
        crown = CrownFitting.fit(inputs, layout);
    }

    public static BridgeAnswer shape(BridgeInputs inputs) {
        List<Problem> problems = BridgeChecks.problems(inputs);
        return problems.isEmpty() ? new Bridge(inputs).shape() : new BridgeRefused(problems);
    }

    private BridgeShape shape() {
        List<SeatedString> strings =
                IntStream.range(0, layout.count()).mapToObj(this::seat).toList();
        return new BridgeShape(inputs, strings, crown, BridgeCaveats.list(inputs, strings, crown));
    }

    private SeatedString seat(int string) {
        double wood_mm = crown.height_mm(layout.bridgeY_mm(string));
        double underside_mm = wood_mm - layout.groove_mm(string);
        return new SeatedString(
                inputs.strings().get(string).name(),
                Length.ofMm(layout.nutY_mm(string)),
                Length.ofMm(layout.bridgeY_mm(string)),
                Length.ofMm(layout.nutUnderside_mm(string)),
                Length.ofMm(underside_mm),
                Length.ofMm(inputs.projection_mm() + wood_mm),
                Length.ofMm(layout.boardEndClearance_mm(string, underside_mm)));
    }
}
