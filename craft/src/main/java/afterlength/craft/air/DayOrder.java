package afterlength.craft.air;

/** How a date in digits is written. It is asked and never guessed: 03/04 is a day in March or in April. */
public enum DayOrder {
    YEAR_FIRST("year first, 2026-03-31"),
    DAY_FIRST("day first, 31/03/2026"),
    MONTH_FIRST("month first, 03/31/2026");

    private final String words;

    DayOrder(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
