package afterlength.craft.setup;

/** One of several crowns laid side by side on the same instrument. */
public sealed interface CrownTrial permits CrownTried, CrownNotPossible {
    /** The crown as it was asked for. */
    Crown crown();
}
