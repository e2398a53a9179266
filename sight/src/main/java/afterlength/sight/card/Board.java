package afterlength.sight.card;

import afterlength.craft.geometry.Point;

/**
 * One chessboard of 9 mm squares whose white squares carry its number and their own place, so that any part of it is enough to
 * know where one is. The squares along its edge are half as broad. A board lies level or upright on its card.
 *
 * @param number carried by its squares
 * @param rows of squares, the half ones counted
 * @param x_mm its upper left corner on the card
 * @param upright whether it is turned by a right angle, its rows running down the card
 */
public record Board(int number, int rows, int columns, double x_mm, double y_mm, boolean upright) {
    /** Read to 1.8 m from a usual telephone, where a square covers 15 pixels (docs/sources.md#photo-study). */
    public static final double SQUARE_MM = 9;

    private static final int ROWS_OF_AN_ARM = 3;

    static Board of(int number, int rows, int columns, double x_mm, double y_mm) {
        return new Board(number, rows, columns, x_mm, y_mm, false);
    }

    static Board level(int number, int columns, double x_mm, double y_mm) {
        return new Board(number, ROWS_OF_AN_ARM, columns, x_mm, y_mm, false);
    }

    static Board upright(int number, int columns, double x_mm, double y_mm) {
        return new Board(number, ROWS_OF_AN_ARM, columns, x_mm, y_mm, true);
    }

    public int cornerCount() {
        return (rows - 1) * (columns - 1);
    }

    /** The place on the card of a corner between four squares; they are counted row by row. */
    public Point corner(int index) {
        int row = index / (columns - 1);
        int column = index % (columns - 1);
        return onCard((column + 0.5) * SQUARE_MM, (row + 0.5) * SQUARE_MM);
    }

    /** From the board's own axes, along its columns and down its rows, to the card's. */
    Point onCard(double along_mm, double down_mm) {
        double breadth_mm = (rows - 1) * SQUARE_MM;
        return upright
                ? Point.of(x_mm + breadth_mm - down_mm, y_mm + along_mm)
                : Point.of(x_mm + along_mm, y_mm + down_mm);
    }
}
