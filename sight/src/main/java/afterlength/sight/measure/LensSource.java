package afterlength.sight.measure;

/** What was known of the lens beside the card in the picture itself, which always takes part. */
public enum LensSource {
    CALIBRATED,

    /** The focal length that the file notes. */
    NOTED,

    /** Nothing; the card alone. */
    CARD
}
