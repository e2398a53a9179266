package afterlength.start.verbs;

import static java.util.stream.Collectors.joining;

import afterlength.craft.setup.Caveat;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.SetupQuantity;
import afterlength.craft.units.Length;
import afterlength.start.document.Figure;
import java.util.List;
import java.util.Locale;

/** The caveats of a bridge and of the bow on it, in sentences. */
final class SetupCaveatWords {
    private SetupCaveatWords() {}

    static List<String> of(List<Caveat> caveats) {
        return caveats.stream().map(SetupCaveatWords::of).toList();
    }

    static String of(Caveat caveat) {
        if (caveat instanceof Caveat.OutsideCommonRange outside) {
            return outside(outside);
        } else if (caveat instanceof Caveat.ProjectionLow low) {
            return projection("low", low.projection(), low.range(), low.causes());
        } else if (caveat instanceof Caveat.ProjectionHigh high) {
            return projection("high", high.projection(), high.range(), high.causes());
        } else if (caveat instanceof Caveat.NoCommonRange none) {
            return "No common range was found for a speaking length of " + mm(none.speakingLength())
                    + "; nothing was compared with what is usual.";
        } else if (caveat instanceof Caveat.DeepGroove deep) {
            return "A groove of " + Figure.spoken(deep.grooveFraction())
                    + " of the string's diameter is deeper than half the string: it is held fast and buried.";
        }
        return ofStringsAndCrown(caveat);
    }

    private static String ofStringsAndCrown(Caveat caveat) {
        if (caveat instanceof Caveat.InnerClearanceOutsideOuter inner) {
            return "String " + inner.string() + " lies " + mm(inner.clearance()) + " over the board end, outside the "
                    + Figure.spoken(inner.lower().mm()) + " to " + mm(inner.upper())
                    + " of the outer strings: crown and board do not match.";
        } else if (caveat instanceof Caveat.StringTouchesBoard touching) {
            return "String " + touching.string() + " would touch the end of the board: its clearance there is "
                    + mm(touching.clearance()) + ".";
        } else if (caveat instanceof Caveat.CrownUndercut undercut) {
            return "With a crown radius of " + mm(undercut.radius())
                    + " the bridge would be undercut below its lower outer string; from "
                    + mm(undercut.smallestUpright()) + " on it is not.";
        } else if (caveat instanceof Caveat.TrebleAboveBass exchanged) {
            return "The treble string is wanted higher over the board end (" + mm(exchanged.treble())
                    + ") than the bass string (" + mm(exchanged.bass()) + "); the two may have been exchanged.";
        }
        return ofBow(caveat);
    }

    private static String ofBow(Caveat caveat) {
        if (caveat instanceof Caveat.ScoopNotMeasured) {
            return "The scoop of the board was not measured; stopped strings are taken to lie on a straight board.";
        } else if (caveat instanceof Caveat.WaistNotMeasured) {
            return "The waist was not measured; on their outer sides the outer strings have no limit here.";
        } else if (caveat instanceof Caveat.BowOverBoard over) {
            return "At " + mm(over.distance()) + " from the bridge the bow plays over the board, which ends "
                    + mm(over.boardEnd()) + " from it; that the bow may touch the board is not reckoned.";
        }
        throw new IllegalStateException("no words for " + caveat);
    }

    private static String outside(Caveat.OutsideCommonRange outside) {
        String unit = outside.quantity() == SetupQuantity.STRING_ANGLE ? "°" : "mm";
        return "The " + words(outside.quantity()) + " is " + Figure.spoken(outside.value()) + " " + unit
                + "; common is " + range(outside.range()) + " " + unit + ".";
    }

    private static String projection(String what, Length projection, CommonRange range, List<HeightCause> causes) {
        return "The projection of " + mm(projection) + " is " + what + "; common is " + range(range)
                + " mm. Look in this order at: "
                + causes.stream().map(SetupCaveatWords::words).collect(joining(", ")) + ".";
    }

    private static String range(CommonRange range) {
        return Figure.spoken(range.low()) + " to " + Figure.spoken(range.high());
    }

    private static String mm(Length length) {
        return Figure.spoken(length.mm()) + " mm";
    }

    private static String words(SetupQuantity quantity) {
        return switch (quantity) {
            case PROJECTION -> "projection";
            case CENTRE_HEIGHT -> "height of the bridge on the centre line";
            case BOARD_END_CLEARANCE_BASS -> "clearance of the bass string at the board end";
            case BOARD_END_CLEARANCE_TREBLE -> "clearance of the treble string at the board end";
            case NUT_SPACING -> "string spacing at the nut";
            case BRIDGE_SPACING -> "string spacing at the bridge";
            case BOARD_RADIUS -> "board radius";
            case CROWN_RADIUS -> "crown radius";
            case SCOOP_BASS -> "scoop under the bass string";
            case SCOOP_TREBLE -> "scoop under the treble string";
            case STRING_ANGLE -> "string angle";
            case AFTER_LENGTH -> "after-length";
            case POST_DIAMETER -> "diameter of the post";
            case POST_BEHIND_FOOT -> "distance of the post behind the foot";
        };
    }

    /** The causes are named in craft by what is looked at. */
    private static String words(HeightCause cause) {
        return cause.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
