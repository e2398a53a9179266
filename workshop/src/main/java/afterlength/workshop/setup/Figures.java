package afterlength.workshop.setup;

import afterlength.craft.units.Length;
import java.util.Locale;

/** How a measured number is written on the bench: no more places than a rule or a knife can follow. */
final class Figures {
    private Figures() {}

    /** To a tenth of a millimetre, such as {@code 33.1}; a true minus sign. */
    static String tenths(double value_mm) {
        return signed(String.format(Locale.ROOT, "%.1f", value_mm));
    }

    static String tenths(Length length) {
        return tenths(length.mm());
    }

    /** To a hundredth, for thin things such as strings. */
    static String hundredths(double value_mm) {
        return signed(String.format(Locale.ROOT, "%.2f", value_mm));
    }

    static String whole(double value_mm) {
        return signed(String.format(Locale.ROOT, "%.0f", value_mm));
    }

    static String mm(Length length) {
        return tenths(length) + " mm";
    }

    private static String signed(String figure) {
        return figure.matches("-0(\\.0+)?") ? figure.substring(1) : figure.replace('-', '−');
    }
}
