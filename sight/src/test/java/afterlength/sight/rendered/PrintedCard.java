package afterlength.sight.rendered;

import afterlength.craft.geometry.Point;
import afterlength.sight.card.Card;
import afterlength.sight.card.Patch;
import afterlength.sight.card.Rectangle;
import afterlength.sight.card.Segment;
import java.util.ArrayList;
import java.util.List;

/** How much light a place of the printed card gives back; ink that spreads makes every black thing fatter on all sides. */
final class PrintedCard {
    private static final double PAPER = 0.85;
    private static final double BLACK = 0.05;
    private static final double BENCH = 0.22;
    private static final double LINE_MM = 0.2;
    private static final double CELL_MM = 3;

    private final double width_mm;
    private final double height_mm;
    private final boolean isL;
    private final List<List<Ink>> cells = new ArrayList<>();
    private final int columns;
    private final int rows;

    private record Ink(double left, double top, double right, double bottom, double light) {
        boolean covers(double x, double y) {
            return x >= left && x <= right && y >= top && y <= bottom;
        }
    }

    PrintedCard(Card card, double spread_mm) {
        width_mm = card.width_mm();
        height_mm = card.height_mm();
        isL = card.isBody();
        columns = (int) (width_mm / CELL_MM) + 1;
        rows = (int) (height_mm / CELL_MM) + 1;
        for (int n = 0; n < columns * rows; n++) {
            cells.add(new ArrayList<>());
        }
        card.squares().forEach(square -> put(square, spread_mm, BLACK));
        card.rule().forEach(tick -> put(around(tick), spread_mm, BLACK));
        card.patches().forEach(patch -> put(patch.place(), 0, light(patch)));
        if (isL) {
            card.checkLines().forEach(line -> put(around(line), spread_mm, BLACK));
        }
    }

    private static Rectangle around(Segment line) {
        Point from = line.from();
        Point to = line.to();
        return new Rectangle(
                Math.min(from.x_mm(), to.x_mm()) - LINE_MM / 2,
                Math.min(from.y_mm(), to.y_mm()) - LINE_MM / 2,
                Math.abs(to.x_mm() - from.x_mm()) + LINE_MM,
                Math.abs(to.y_mm() - from.y_mm()) + LINE_MM);
    }

    private static double light(Patch patch) {
        double share = (0.3 * patch.red_pct() + 0.59 * patch.green_pct() + 0.11 * patch.blue_pct()) / 100;
        return BLACK + (PAPER - BLACK) * Math.pow(share, 2.2);
    }

    private void put(Rectangle place, double spread_mm, double light) {
        Ink ink = new Ink(
                place.left_mm() - spread_mm,
                place.top_mm() - spread_mm,
                place.left_mm() + place.width_mm() + spread_mm,
                place.top_mm() + place.height_mm() + spread_mm,
                light);
        for (int row = cell(ink.top()); row <= Math.min(rows - 1, cell(ink.bottom())); row++) {
            for (int column = cell(ink.left()); column <= Math.min(columns - 1, cell(ink.right())); column++) {
                cells.get(row * columns + column).add(ink);
            }
        }
    }

    private static int cell(double mm) {
        return Math.max(0, (int) (mm / CELL_MM));
    }

    /** Whether any part of the card may lie within this box. */
    boolean mayTouch(double left, double top, double right, double bottom) {
        boolean apart = right < 0 || bottom < 0 || left > width_mm || top > height_mm;
        boolean insideTheL = isL && left > Card.ARM_MM && bottom < height_mm - Card.ARM_MM;
        return !apart && !insideTheL;
    }

    double light(double x, double y) {
        boolean offTheSheet = x < 0 || y < 0 || x > width_mm || y > height_mm;
        boolean insideTheL = isL && x > Card.ARM_MM && y < height_mm - Card.ARM_MM;
        if (offTheSheet || insideTheL) {
            return BENCH;
        }
        for (Ink ink : cells.get(cell(y) * columns + cell(x))) {
            if (ink.covers(x, y)) {
                return ink.light();
            }
        }
        return PAPER;
    }

    static double bench() {
        return BENCH;
    }
}
