package afterlength.craft.setup;

import java.util.List;

/**
 * A set of strings at a pitch standard over one speaking length; any number can stand here, {@link StringSetChecks} names what is
 * wrong.
 *
 * @param a4_Hz the pitch of the a above middle C
 */
public record StringSet(double speakingLength_mm, double a4_Hz, List<StringOrder> strings, StringBreak overBridge) {
    public static final double USUAL_A4_Hz = 440;

    public StringSet {
        strings = List.copyOf(strings);
    }

    public StringSet withA4_Hz(double other) {
        return new StringSet(speakingLength_mm, other, strings, overBridge);
    }
}
