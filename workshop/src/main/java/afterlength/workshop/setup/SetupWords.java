package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.Caveat;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.SetupQuantity;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.stream.Collectors;

/** The words of the set-up, in one place for page, paper and test. */
public final class SetupWords {
    private SetupWords() {}

    /** The answer in one sentence. */
    public static String answer(BridgeShape shape) {
        return "Cut the bridge " + Figures.mm(shape.centreHeight().mm(), 1) + " high on the centre line";
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
        return shape.caveats().stream().map(SetupWords::caveat).toList();
    }

    public static String caveat(Caveat caveat) {
        if (caveat instanceof Caveat.OutsideCommonRange it) {
            return quantity(it.quantity()) + " of " + Figures.mm(it.value(), 1) + " lies outside what is common ("
                    + range(it.range()) + "). Look once more; it may be right.";
        }
        if (caveat instanceof Caveat.ProjectionLow it) {
            return "The projection of " + Figures.mm(it.projection().mm(), 1) + " is lower than common ("
                    + range(it.range()) + "), so the bridge comes out low. Look in this order: " + causes(it.causes())
                    + ".";
        }
        if (caveat instanceof Caveat.ProjectionHigh it) {
            return "The projection of " + Figures.mm(it.projection().mm(), 1) + " is higher than common ("
                    + range(it.range()) + "), so the bridge comes out high. Look in this order: " + causes(it.causes())
                    + ".";
        }
        if (caveat instanceof Caveat.NoCommonRange it) {
            return "No common ranges are known here for a speaking length of "
                    + Figures.mm(it.speakingLength().mm(), 0) + "; nothing is compared.";
        }
        if (caveat instanceof Caveat.InnerClearanceOutsideOuter it) {
            return "String " + it.string() + " stands "
                    + Figures.mm(it.clearance().mm(), 2) + " over the board end, outside the "
                    + Figures.fixed(it.lower().mm(), 2) + " to "
                    + Figures.mm(it.upper().mm(), 2)
                    + " of its outer neighbours: the radius of crown and board do not match.";
        }
        if (caveat instanceof Caveat.StringTouchesBoard it) {
            return "String " + it.string() + " would lie on the board end ("
                    + Figures.mm(it.clearance().mm(), 2) + ").";
        }
        if (caveat instanceof Caveat.CrownUndercut it) {
            return "A crown of " + Figures.mm(it.radius().mm(), 1) + " falls back under the lower outer string; from "
                    + Figures.mm(it.smallestUpright().mm(), 1) + " on it does not.";
        }
        if (caveat instanceof Caveat.DeepGroove it) {
            return "Grooves of " + Figures.plain(it.grooveFraction())
                    + " of the diameter bury the string; a third is usual.";
        }
        if (caveat instanceof Caveat.TrebleAboveBass it) {
            return "The treble string is wanted higher ("
                    + Figures.mm(it.treble().mm(), 1) + ") than the bass string ("
                    + Figures.mm(it.bass().mm(), 1) + "). Were the two exchanged?";
        }
        throw new IllegalStateException("no words for " + caveat);
    }

    static String range(CommonRange range) {
        return Figures.plain(range.low()) + " – " + Figures.plain(range.high()) + " mm";
    }

    private static String causes(List<HeightCause> causes) {
        return causes.stream().map(SetupWords::cause).collect(Collectors.joining(", "));
    }

    private static String cause(HeightCause cause) {
        return switch (cause) {
            case STRING_TYPE -> "the kind of strings";
            case BRIDGE_WARPED_OR_LEANING -> "the bridge, bent or leaning";
            case NUT_HEIGHT -> "the nut";
            case BOARD_SCOOP_RUTS_OR_WARP -> "the board: scoop, ruts, warp";
            case NECK_DROP -> "a neck that has dropped";
            case ARCH_RISEN_OR_SUNK -> "the arch, risen or sunk";
            case OPEN_SEAMS -> "open seams";
            case SEASON -> "the season";
        };
    }

    private static String quantity(SetupQuantity quantity) {
        return switch (quantity) {
            case PROJECTION -> "A projection";
            case CENTRE_HEIGHT -> "A bridge height";
            case BOARD_END_CLEARANCE_BASS -> "A bass clearance at the board end";
            case BOARD_END_CLEARANCE_TREBLE -> "A treble clearance at the board end";
            case NUT_SPACING -> "A spacing at the nut";
            case BRIDGE_SPACING -> "A spacing at the bridge";
            case BOARD_RADIUS -> "A board radius";
            case CROWN_RADIUS -> "A crown radius";
            case SCOOP_BASS -> "A bass scoop";
            case SCOOP_TREBLE -> "A treble scoop";
            case STRING_ANGLE -> "A string angle";
            case AFTER_LENGTH -> "An after-length";
        };
    }
}
