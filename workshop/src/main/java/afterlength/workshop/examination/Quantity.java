package afterlength.workshop.examination;

import java.util.Arrays;
import java.util.Optional;

/**
 * Quantities that a workshop measures again and again, under keys that stay: the set-up of a bridge asks for some of them by
 * name. Each says how it is measured, since a number without that can be wrong by more than its ±. Ranges run from the smallest
 * violin to a large double bass and are a guard against slips, not a judgement. How they are taken: docs/sources.md#measuring-habits.
 */
public enum Quantity {
    BODY_LENGTH("body length", "over the back, without the button", "mm", 150, 1300),
    UPPER_BOUT_WIDTH("upper bout width", "over the back, calliper", "mm", 60, 600),
    WAIST_WIDTH("waist width", "over the back, calliper", "mm", 40, 450),
    LOWER_BOUT_WIDTH("lower bout width", "over the back, calliper", "mm", 70, 800),
    STOP("stop", "from the upper edge of the top to the inner notch of the sound-hole", "mm", 70, 750),
    NECK_LENGTH("neck length", "from the edge of the nut to the upper edge of the top", "mm", 50, 520),
    SPEAKING_LENGTH("string length", "from the edge of the nut to the top of the bridge", "mm", 120, 1250),
    AFTER_LENGTH("after-length", "from the bridge to the tailpiece fret", "mm", 15, 350),
    BOARD_LENGTH("board length", "from the edge of the nut to the end of the board", "mm", 90, 1000),
    BOARD_RADIUS("board radius", "by template across the board", "mm", 15, 250),
    NUT_SPACING("spacing at the nut", "outer strings, centre to centre", "mm", 5, 60),
    BRIDGE_SPACING("spacing at the bridge", "outer strings, centre to centre", "mm", 12, 150),
    NUT_CLEARANCE_BASS("nut clearance, bass", "underside of the string to the board at the nut", "mm", 0, 5),
    NUT_CLEARANCE_TREBLE("nut clearance, treble", "underside of the string to the board at the nut", "mm", 0, 5),
    BOARD_END_CLEARANCE_BASS(
            "height at board end, bass", "underside of the string to the end of the board, square to it", "mm", 0, 30),
    BOARD_END_CLEARANCE_TREBLE(
            "height at board end, treble",
            "underside of the string to the end of the board, square to it",
            "mm",
            0,
            30),
    PROJECTION(
            "projection",
            "straight-edge along the middle of the board, from the top at the bridge place up to it",
            "mm",
            3,
            250),
    OVERSTAND("overstand", "from the edge of the top to the underside of the board", "mm", 0, 80),
    BRIDGE_HEIGHT("bridge height", "on the centre line, from the top to the crown", "mm", 12, 260),
    ARCH_HEIGHT_TOP("arch height, top", "above the edge, at the highest place", "mm", 3, 70),
    ARCH_HEIGHT_BACK("arch height, back", "above the edge, at the highest place", "mm", 3, 70),
    RIB_HEIGHT_UPPER("rib height, upper block", "without the plates", "mm", 12, 250),
    RIB_HEIGHT_LOWER("rib height, lower block", "without the plates", "mm", 12, 250),
    BOARD_RELIEF_BASS("board relief, bass", "under a straight-edge along the bass side, at its deepest", "mm", 0, 6),
    BOARD_RELIEF_TREBLE(
            "board relief, treble", "under a straight-edge along the treble side, at its deepest", "mm", 0, 6),
    MASS("mass", "with fittings and strings unless the method says otherwise", "g", 100, 20_000);

    private final String words;
    private final String meaning;
    private final String unit;
    private final double lowest;
    private final double highest;

    Quantity(String words, String meaning, String unit, double lowest, double highest) {
        this.words = words;
        this.meaning = meaning;
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
    }

    public String words() {
        return words;
    }

    public String meaning() {
        return meaning;
    }

    public String unit() {
        return unit;
    }

    public double lowest() {
        return lowest;
    }

    public double highest() {
        return highest;
    }

    /** The quantity with these words, whatever their case. */
    static Optional<Quantity> findByWords(String words) {
        return Arrays.stream(values())
                .filter(quantity -> quantity.words.equalsIgnoreCase(words.strip()))
                .findFirst();
    }

    /** The quantity whose key a row carries; nothing when it carries the shop's own words. */
    public static Optional<Quantity> findByKey(String key) {
        return Arrays.stream(values())
                .filter(quantity -> quantity.name().equals(key))
                .findFirst();
    }
}
