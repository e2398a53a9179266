package afterlength.workshop.agreement;

import afterlength.craft.access.Cleat;
import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatShape;
import afterlength.craft.geometry.Point;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.mapper.Nested;
import org.jspecify.annotations.Nullable;

/**
 * How a crack is reached: what was traced, what is meant to lie there, what was seen, and what was chosen.
 *
 * @param outline the edge of the sound-hole, one point a line; {@link TracedPoints} reads it
 * @param crack the line of the crack in the same axes
 * @param stepMm by how much the edges stand out of level
 * @param inside what no cleat may lie on, and where hole and crack were traced
 */
public record AccessStudy(
        long id,
        long findingId,
        @Nullable Long replaces,
        String outline,
        String crack,
        double plateMm,
        double depthMm,
        double cleatLengthMm,
        double cleatWidthMm,
        double cleatThicknessMm,
        CleatShape shape,
        CleatGrain grain,
        double spacingMm,
        double toEndsMm,
        @Nullable Long clampId,
        boolean underPost,
        boolean underBar,
        double stepMm,
        boolean closesDry,
        boolean cleanable,
        AccessChoice chosen,
        String hand,
        Instant writtenAt,
        @Nested Inside inside) {
    /** Points as a study keeps them. */
    public static String written(List<Point> points) {
        return TracedPoints.typed(points);
    }

    Cleat cleat() {
        return new Cleat(cleatLengthMm, cleatWidthMm, cleatThicknessMm);
    }
}
