package afterlength.workshop.closing;

import java.time.Instant;

/**
 * That a thing was recorded, or is open again. The latest of a visit and a thing holds; earlier ones stay.
 *
 * @param thing key of a {@link CoveredThing}
 * @param title its words at that time
 * @param note where it is recorded: number of a picture, page of a notebook
 */
public record Tick(
        long id, long visitId, String thing, String title, boolean done, String note, String hand, Instant writtenAt) {}
