package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;

/**
 * What a value can be at all. Unusual values are inside; only the impossible, and slips of the decimal point that no instrument
 * could excuse, are outside.
 */
record Permitted(double low, boolean lowIncluded, double high, String unit) {
    static Permitted above(double low, double high, String unit) {
        return new Permitted(low, false, high, unit);
    }

    static Permitted from(double low, double high, String unit) {
        return new Permitted(low, true, high, unit);
    }

    /** Not a number is held by nothing. */
    boolean holds(double value) {
        return (lowIncluded ? value >= low : value > low) && value <= high;
    }

    /** Such as "must be more than 0 mm and at most 2000 mm". */
    String demand() {
        String start = lowIncluded ? "must be at least " : "must be more than ";
        return start + PlainNumber.of(low, unit) + " and at most " + PlainNumber.of(high, unit);
    }
}
