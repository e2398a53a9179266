package afterlength.sight.find;

import afterlength.sight.card.Board;
import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How far the edges between the squares of a found card are spread: the standard deviation in pixels of the bell that would
 * blur a sharp edge so, from step and steepest slope, σ = step / (slope √(2π)); the median over the card. Brightness is taken as
 * it stands in the file, whose curve makes the figure a little too small on the dark side.
 */
final class Softness {
    /** As far from an edge as a white square stays blank before its code begins, as a share of the square. */
    private static final double BLANK_SHARE = 0.13;

    private static final double DARK_SHARE = 0.35;
    private static final double STEP_PX = 0.25;

    private final GrayU8 grey;

    private Softness(GrayU8 grey) {
        this.grey = grey;
    }

    static OptionalDouble find_px(GrayU8 grey, List<FoundCorner> found) {
        return new Softness(grey).find_px(found);
    }

    private OptionalDouble find_px(List<FoundCorner> found) {
        Map<Integer, Map<Integer, FoundCorner>> boards = found.stream()
                .collect(Collectors.groupingBy(
                        one -> one.corner().board(),
                        Collectors.toMap(one -> one.corner().index(), Function.identity(), (one, same) -> one)));
        List<Double> spreads = new ArrayList<>();
        boards.values()
                .forEach(corners -> corners.forEach((index, one) -> {
                    FoundCorner next = corners.get(index + 1);
                    if (next != null && areNeighbours(one, next)) {
                        spread_px(one, next).ifPresent(spreads::add);
                    }
                }));
        spreads.sort(Comparator.naturalOrder());
        return spreads.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(spreads.get(spreads.size() / 2));
    }

    private static boolean areNeighbours(FoundCorner one, FoundCorner next) {
        return one.corner().place().distanceTo_mm(next.corner().place()) < 1.5 * Board.SQUARE_MM;
    }

    /** Across the middle of the edge that joins two corners. */
    private OptionalDouble spread_px(FoundCorner one, FoundCorner next) {
        double square_px = one.seen().distanceTo(next.seen());
        double acrossX = -(next.seen().y() - one.seen().y()) / square_px;
        double acrossY = (next.seen().x() - one.seen().x()) / square_px;
        double x = (one.seen().x() + next.seen().x()) / 2;
        double y = (one.seen().y() + next.seen().y()) / 2;
        boolean whiteAhead = at(x + acrossX * 2, y + acrossY * 2) > at(x - acrossX * 2, y - acrossY * 2);
        double toWhite = whiteAhead ? 1 : -1;
        return spread_px(x, y, acrossX * toWhite, acrossY * toWhite, square_px);
    }

    private OptionalDouble spread_px(double x, double y, double toWhiteX, double toWhiteY, double square_px) {
        double dark = at(x - toWhiteX * DARK_SHARE * square_px, y - toWhiteY * DARK_SHARE * square_px);
        double reach_px = Math.max(2, BLANK_SHARE * square_px);
        double steepest = 0;
        double light = dark;
        for (double way = -reach_px; way <= reach_px; way += STEP_PX) {
            double here = at(x + toWhiteX * way, y + toWhiteY * way);
            double ahead = at(x + toWhiteX * (way + 1), y + toWhiteY * (way + 1));
            steepest = Math.max(steepest, ahead - here);
            light = Math.max(light, here);
        }
        return steepest <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((light - dark) / (steepest * Math.sqrt(2 * Math.PI)));
    }

    /** Between the four nearest pixels; beyond the edge the last one goes on. */
    private double at(double x, double y) {
        double left = Math.max(0, Math.min(grey.width - 1.001, x - 0.5));
        double top = Math.max(0, Math.min(grey.height - 1.001, y - 0.5));
        int column = (int) left;
        int row = (int) top;
        double right = left - column;
        double down = top - row;
        double above = grey.unsafe_get(column, row) * (1 - right) + grey.unsafe_get(column + 1, row) * right;
        double below = grey.unsafe_get(column, row + 1) * (1 - right) + grey.unsafe_get(column + 1, row + 1) * right;
        return above * (1 - down) + below * down;
    }
}
