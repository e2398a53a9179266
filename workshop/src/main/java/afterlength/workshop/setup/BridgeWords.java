package afterlength.workshop.setup;

import afterlength.craft.setup.Caveat;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.SetupQuantity;
import afterlength.craft.units.Length;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The facts about a bridge in English sentences, the same on page, paper and in a document. */
public final class BridgeWords {
    private BridgeWords() {}

    /** A caveat as one or two whole sentences. */
    public static String of(Caveat caveat) {
        if (caveat instanceof Caveat.OutsideCommonRange outside) {
            return outside(outside);
        } else if (caveat instanceof Caveat.ProjectionLow low) {
            return projection(low.projection(), "lower", low.range(), low.causes());
        } else if (caveat instanceof Caveat.ProjectionHigh high) {
            return projection(high.projection(), "higher", high.range(), high.causes());
        } else if (caveat instanceof Caveat.NoCommonRange none) {
            return "For a speaking length of " + Figures.mm(none.speakingLength())
                    + " no common range is known; compare with the instrument as it came.";
        } else if (caveat instanceof Caveat.InnerClearanceOutsideOuter inner) {
            return inner(inner);
        } else if (caveat instanceof Caveat.StringTouchesBoard touches) {
            return "The " + touches.string() + " string would lie on the end of the board (clearance "
                    + Figures.mm(touches.clearance()) + "). Give more clearance or another crown.";
        }
        return ofWood(caveat);
    }

    private static String ofWood(Caveat caveat) {
        if (caveat instanceof Caveat.CrownUndercut undercut) {
            return "A crown radius of " + Figures.mm(undercut.radius())
                    + " undercuts the bridge below its lower outer string; " + Figures.mm(undercut.smallestUpright())
                    + " or more leaves it upright.";
        } else if (caveat instanceof Caveat.DeepGroove deep) {
            return "A groove " + Figures.hundredths(deep.grooveFraction())
                    + " of the string deep holds the string fast; half or less lets it slide when tuned.";
        } else if (caveat instanceof Caveat.TrebleAboveBass above) {
            return "More clearance is wanted under the treble string (" + Figures.mm(above.treble())
                    + ") than under the bass string (" + Figures.mm(above.bass()) + "); were the two exchanged?";
        }
        return ofBow(caveat);
    }

    private static String ofBow(Caveat caveat) {
        if (caveat instanceof Caveat.ScoopNotMeasured) {
            return "The scoop of the board was not measured; stopped strings are taken to lie on a board without one, and so come"
                    + " out higher than they are.";
        } else if (caveat instanceof Caveat.WaistNotMeasured) {
            return "The waist was not measured; on their outer sides the outer strings have no limit here.";
        } else if (caveat instanceof Caveat.BowOverBoard over) {
            return "At " + Figures.mm(over.distance()) + " from the bridge the bow plays over the board, which ends "
                    + Figures.mm(over.boardEnd()) + " from it; whether it meets the board was not looked at.";
        } else if (caveat instanceof Caveat.EvenPlayWithoutForce) {
            return "The tension of a string is not known; even play was looked for with a bow that does not press.";
        }
        throw new IllegalArgumentException("no words for the caveat " + caveat);
    }

    private static String outside(Caveat.OutsideCommonRange caveat) {
        boolean angle = caveat.quantity() == SetupQuantity.STRING_ANGLE;
        String unit = angle ? "°" : " mm";
        return "The " + words(caveat.quantity()) + " of " + Figures.tenths(caveat.value()) + unit + " is outside "
                + common(caveat.range(), unit) + "; look at it twice.";
    }

    private static String projection(Length projection, String how, CommonRange range, List<HeightCause> causes) {
        return "The projection of " + Figures.mm(projection) + " is " + how + " than " + common(range, " mm")
                + ", and the bridge with it. Check in this order: "
                + causes.stream().map(BridgeWords::words).collect(Collectors.joining(", ")) + ".";
    }

    private static String inner(Caveat.InnerClearanceOutsideOuter caveat) {
        String comes = IntStream.range(0, caveat.strings().size())
                .mapToObj(i -> caveat.strings().get(i)
                        + (i == 0 ? " string comes to " : " to ")
                        + Figures.mm(caveat.clearances().get(i)))
                .collect(Collectors.joining(", "));
        return "At the board end the " + comes + ", outside the two outer ones (" + Figures.tenths(caveat.lower())
                + " to " + Figures.mm(caveat.upper()) + "): crown and board do not match.";
    }

    private static String common(CommonRange range, String unit) {
        return "what is common (" + Figures.tenths(range.low()) + " to " + Figures.tenths(range.high()) + unit + ")";
    }

    static String words(SetupQuantity quantity) {
        return switch (quantity) {
            case PROJECTION -> "projection";
            case CENTRE_HEIGHT -> "bridge height on the centre line";
            case BOARD_END_CLEARANCE_BASS -> "bass clearance at the board end";
            case BOARD_END_CLEARANCE_TREBLE -> "treble clearance at the board end";
            case NUT_SPACING -> "string spacing at the nut";
            case BRIDGE_SPACING -> "string spacing at the bridge";
            case BOARD_RADIUS -> "radius of the board";
            case CROWN_RADIUS -> "radius of the crown";
            case SCOOP_BASS -> "scoop under the bass string";
            case SCOOP_TREBLE -> "scoop under the treble string";
            case STRING_ANGLE -> "string angle over the bridge";
            case AFTER_LENGTH -> "after-length";
            case POST_DIAMETER -> "diameter of the post";
            case POST_BEHIND_FOOT -> "distance of the post behind the foot";
        };
    }

    static String words(HeightCause cause) {
        return switch (cause) {
            case STRING_TYPE -> "kind of strings";
            case BRIDGE_WARPED_OR_LEANING -> "bridge warped or leaning";
            case NUT_HEIGHT -> "nut height";
            case BOARD_SCOOP_RUTS_OR_WARP -> "scoop, ruts or warp of the board";
            case NECK_DROP -> "neck dropped";
            case ARCH_RISEN_OR_SUNK -> "arch risen or sunk";
            case OPEN_SEAMS -> "open seams";
            case SEASON -> "season";
        };
    }
}
