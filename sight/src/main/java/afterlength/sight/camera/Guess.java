package afterlength.sight.camera;

/**
 * What is known of a quantity before the picture is looked at: a value and the standard deviation it may be off by.
 */
public record Guess(double value, double deviation) {
    public Guess {
        if (!Double.isFinite(value) || !(deviation > 0)) {
            throw new IllegalArgumentException("a guess of " + value + " ± " + deviation + " says nothing");
        }
    }

    /** The same value, less sure: another cause of being off, as a deviation, is joined. */
    public Guess widened(double by) {
        return new Guess(value, Math.hypot(deviation, by));
    }

    /** As sure, of another value. */
    public Guess at(double other) {
        return new Guess(other, deviation);
    }

    /** How far a value lies from the guess, in deviations. */
    double distance(double other) {
        return (other - value) / deviation;
    }
}
