package afterlength.workshop.instrument;

import org.jspecify.annotations.Nullable;

/**
 * A violin, viola, cello, bass or fractional size, with its story. What the owner tells and what papers show are kept apart;
 * nothing here is the shop's opinion about who made it.
 *
 * @param name how the shop calls it: "Viola, about 1905"
 * @param unplayedSince year, when told
 */
public record Instrument(
        long id,
        long ownerId,
        InstrumentKind kind,
        String name,
        String sizeWords,
        String madeWords,
        String labelWords,
        String marksWords,
        @Nullable Double bodyLengthMm,
        String storyTold,
        String storyDocumented,
        @Nullable Integer unplayedSince,
        int version) {
    public Instrument {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an instrument has a name");
        }
    }
}
