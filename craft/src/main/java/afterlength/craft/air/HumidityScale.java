package afterlength.craft.air;

/** The unit of a humidity column. */
public enum HumidityScale {
    PER_CENT("%"),
    FRACTION("0 to 1");

    private final String unit;

    HumidityScale(String unit) {
        this.unit = unit;
    }

    public String unit() {
        return unit;
    }

    double pct(double value) {
        return this == PER_CENT ? value : value * 100;
    }
}
