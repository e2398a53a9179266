package afterlength.workshop.examination;

import afterlength.sight.measure.Height;
import org.jspecify.annotations.Nullable;

/** How high over the card a mark lies, as a person chooses it; a number typed beside it holds instead. */
public enum ArchHeight {
    UNKNOWN("not said", Height.UNKNOWN),
    PLANE("flat beside the card", Height.IN_PLANE),
    EDGE("at the edge", Height.EDGE),
    HALF("half way up the arch", Height.HALF),
    TOP("top of the arch", Height.TOP);

    private final String words;
    /** Immutable, though its type does not say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Height height;

    ArchHeight(String words, Height height) {
        this.words = words;
        this.height = height;
    }

    public String words() {
        return words;
    }

    /** What is counted with, the typed millimetres where there are any. */
    Height height(@Nullable Double typed_mm) {
        return typed_mm == null ? height : Height.given(typed_mm);
    }
}
