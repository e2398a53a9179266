package afterlength.craft.air;

/** The unit of a temperature column. */
public enum TemperatureScale {
    CELSIUS("°C"),
    FAHRENHEIT("°F");

    private final String unit;

    TemperatureScale(String unit) {
        this.unit = unit;
    }

    public String unit() {
        return unit;
    }

    double celsius(double value) {
        return this == CELSIUS ? value : (value - 32) / 1.8;
    }
}
