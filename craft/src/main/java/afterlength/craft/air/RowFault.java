package afterlength.craft.air;

/** Why a row of a logger file is not counted. Impossible are temperatures outside −50 to 80 °C: docs/sources.md#logger-layouts. */
public enum RowFault {
    TOO_FEW_COLUMNS("has fewer columns than the layout names"),
    TOO_LONG("is longer than any row of readings"),
    TIME_UNREADABLE("has a time that cannot be read in the order of day and month that was given"),
    TIME_DOES_NOT_EXIST("has a time that was left out when the clocks were set forward"),
    TEMPERATURE_UNREADABLE("has no readable temperature"),
    TEMPERATURE_IMPOSSIBLE("has a temperature outside −50 to 80 °C"),
    HUMIDITY_UNREADABLE("has no readable humidity"),
    HUMIDITY_IMPOSSIBLE("has a humidity outside 0 to 100 %"),
    SAME_AGAIN("says the same as another row of the same time"),
    OTHER_VALUES_AT_THE_SAME_TIME(
            "gives other values for a time that was read already; the first are kept. If the clock was set back here, say that "
                    + "the logger follows summer time"),
    BEYOND_THE_LIMIT("lies beyond the four million rows that one record may hold");

    private final String words;

    RowFault(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
