package afterlength.workshop.desk;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads a number as people write it: {@code 12.5} and {@code 12,5} both, a minus sign of either kind, no thousands sign. */
public final class DecimalText {
    private static final Pattern NUMBER = Pattern.compile("[-−+]?(\\d+([.,]\\d*)?|[.,]\\d+)");

    private DecimalText() {}

    public static OptionalDouble read(String text) {
        String bare = text.strip().replace("\u00a0", "");
        if (bare.length() > 30 || !NUMBER.matcher(bare).matches()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(bare.replace(',', '.').replace('−', '-')));
    }
}
