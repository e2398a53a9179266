package afterlength.craft.units;

/** A temperature in degrees Celsius. A difference of temperatures is not a {@code Temperature}; it is a plain {@code delta_C}. */
public record Temperature(double celsius) {
    /** Absolute zero, exact by definition. Source: docs/sources.md#si-brochure. */
    static final double ABSOLUTE_ZERO_C = -273.15;

    public Temperature {
        Finite.require("temperature", celsius, "°C");
        if (celsius < ABSOLUTE_ZERO_C) {
            throw new IllegalArgumentException("temperature " + celsius + " °C lies below absolute zero, -273.15 °C");
        }
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius);
    }

    /** The two fixed points of the scale are 32 and 212 °F. */
    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature((fahrenheit - 32) / 1.8);
    }
}
