package afterlength.craft.colour;

/** The lights under which a retouch is judged. Source: docs/sources.md#cie-tables and docs/sources.md#cie-led. */
public enum Light {
    D65("daylight (D65)", 4),
    A("incandescent lamp (A)", 5),
    LED_B1("warm LED lamp (LED-B1)", 6);

    private final String words;
    private final int column;

    Light(String words, int column) {
        this.words = words;
        this.column = column;
    }

    /** Where it stands in a row of {@link CieTable}. */
    int column() {
        return column;
    }

    public String words() {
        return words;
    }
}
