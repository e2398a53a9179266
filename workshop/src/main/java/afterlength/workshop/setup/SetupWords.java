package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.stream.Collectors;

/** The answer of the set-up in sentences, for page and report; caveats are put into words by {@link BridgeWords}. */
public final class SetupWords {
    private SetupWords() {}

    /** The answer in one sentence. */
    public static String answer(BridgeShape shape) {
        return "Cut the bridge " + Figures.mm(shape.centreHeight().mm(), 1) + " high on the centre line";
    }

    /** The same for a bridge that stands. */
    public static String asCut(BridgeShape shape) {
        return "The bridge was drawn " + Figures.mm(shape.centreHeight().mm(), 1) + " high on the centre line,";
    }

    public static String plusMinus(BridgeShape shape) {
        return "± " + Figures.mm(shape.heightPlusMinus().mm(), 1);
    }

    /** Why this height, and where the crown is highest. */
    public static String reason(BridgeShape shape) {
        double y = shape.highestAtY().mm();
        String side = Math.abs(y) < 0.05
                ? "on the centre line"
                : Figures.mm(Math.abs(y), 1) + " to the " + (y < 0 ? "bass" : "treble");
        return "So that " + clearances(shape) + " over the board end. The crown is highest " + side + ", "
                + Figures.mm(shape.highest().mm(), 1) + " over the belly.";
    }

    private static String clearances(BridgeShape shape) {
        return shape.strings().stream()
                        .map(string -> string.name() + " stands "
                                + Figures.fixed(string.boardEndClearance().mm(), 1))
                        .collect(Collectors.joining(", "))
                + " mm";
    }

    /** What the ± is made of. */
    public static String whyPlusMinus() {
        return "The ± (k = 2) is what the usual reading errors of rule and straightedge do to this height; the knife adds its own.";
    }

    public static List<String> caveats(BridgeShape shape) {
        return shape.caveats().stream().map(BridgeWords::of).toList();
    }
}
