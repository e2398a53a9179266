package afterlength.sight.colour;

/**
 * What a colour in CIELAB (D65) read from a photograph is worth. The usual error is the mean of ΔE00 over browns and oranges in our
 * own simulation (docs/sources.md#colour-study); one in twenty is some two to three times as far off.
 */
public enum ColourClass {
    /** Two places of one picture against each other. */
    INSIDE_ONE_PHOTO("difference inside one photo", 0.39, 0.9),
    /** One place in two pictures, brought together by the same print of the card. */
    TRANSFERRED("transferred", 0.37, 1.3),
    /** Patches whose colours were measured with an instrument stood in the picture. */
    MEASURED_PATCHES("measured patches", 1.5, 4.7),
    /** Taken as the camera made it. */
    UNCALIBRATED("uncalibrated", 4.8, 7.9);

    private final String words;
    private final double daylight_dE00;
    private final double warm_dE00;

    ColourClass(String words, double daylight_dE00, double warm_dE00) {
        this.words = words;
        this.daylight_dE00 = daylight_dE00;
        this.warm_dE00 = warm_dE00;
    }

    public String words() {
        return words;
    }

    /** The usual error in daylight, or under a warm lamp. */
    public double usualError_dE00(boolean warm) {
        return warm ? warm_dE00 : daylight_dE00;
    }
}
