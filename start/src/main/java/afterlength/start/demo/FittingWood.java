package afterlength.start.demo;

/** Wood of pegs, tailpiece and buttons, as linear light reflected. */
enum FittingWood {
    EBONY(0.020, 0.016, 0.014),
    BOXWOOD(0.23, 0.105, 0.036),
    ROSEWOOD(0.085, 0.028, 0.017);

    private final double red;
    private final double green;
    private final double blue;

    FittingWood(double red, double green, double blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
    }

    /** The wood at a place where its streaks are so strong against the mean. */
    void put(double streak, Colour colour) {
        colour.set(red * streak, green * streak, blue * streak, 1);
    }
}
