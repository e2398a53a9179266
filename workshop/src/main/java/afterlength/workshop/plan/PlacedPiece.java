package afterlength.workshop.plan;

import java.time.Instant;

/**
 * A piece with its place in a plan.
 *
 * @param handsEnd when the hands let go
 * @param end when the wait is over, too
 * @param hand whose hands; also named where only a wait stands, and then without meaning
 */
public record PlacedPiece(long stepId, int part, Instant start, Instant handsEnd, Instant end, String hand) {
    public boolean hasHands() {
        return handsEnd.isAfter(start);
    }

    public boolean hasWait() {
        return end.isAfter(handsEnd);
    }
}
