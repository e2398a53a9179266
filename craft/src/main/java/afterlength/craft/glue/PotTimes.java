package afterlength.craft.glue;

/**
 * How long the stages of a batch take. Sources give ranges, not one number; the usual value is what a timer begins with, and every
 * one can be changed.
 */
public enum PotTimes {
    /** Pearls and ground glue 1 to 4 h. Source: docs/sources.md#taggart-1913. */
    SOAK_GROUND(60, 120, 240),
    /** Flakes 10 to 12 h. Source: docs/sources.md#taggart-1913. */
    SOAK_FLAKES(600, 660, 720),
    /** Slowly, about half an hour. Source: docs/sources.md#taggart-1913. */
    WARM(20, 30, 45),
    /** One working day, not overnight. Source: docs/sources.md#taggart-1913. */
    USE_HOT(360, 480, 600),
    /** Sealed and cold 1 to 4 weeks. Source: docs/sources.md#glue-mixing. */
    KEEP_COLD(7 * 1440, 14 * 1440, 28 * 1440),
    /** In clamps: 3–4 h, 6 h, a day, two days; overnight is the usual. Sources: docs/sources.md#taggart-1913, docs/sources.md#shop-times. */
    CLAMP(180, 720, 2880);

    private final int least_min;
    private final int usual_min;
    private final int most_min;

    PotTimes(int least_min, int usual_min, int most_min) {
        this.least_min = least_min;
        this.usual_min = usual_min;
        this.most_min = most_min;
    }

    public int least_min() {
        return least_min;
    }

    public int usual_min() {
        return usual_min;
    }

    public int most_min() {
        return most_min;
    }
}
