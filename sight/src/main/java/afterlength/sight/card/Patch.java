package afterlength.sight.card;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A square of one colour. The first six are greys to be printed with black ink only; what a printer makes of the other twelve
 * nobody knows, so they carry a colour from one photograph to the next and never say what a colour is.
 *
 * @param red_pct share of full light asked of the printer, likewise green and blue
 */
public record Patch(Rectangle place, int red_pct, int green_pct, int blue_pct) {
    public static final double SIDE_MM = 4;

    /** Bare paper stays between them, so that four patches never look like a corner of a chessboard. */
    private static final double PITCH_MM = 5;

    /** White paper to black, evenly spaced in the file. */
    private static final int[] GREYS_PCT = {100, 80, 60, 40, 20, 0};

    /** Our own choice: browns and oranges of varnish in four depths, and the primaries they are mixed from. */
    private static final int[][] COLOURS_PCT = {
        {85, 62, 35}, {72, 45, 20}, {60, 32, 14}, {42, 20, 10}, {80, 50, 10}, {65, 25, 10},
        {45, 12, 12}, {90, 80, 55}, {85, 20, 15}, {20, 50, 25}, {20, 30, 60}, {90, 80, 15}
    };

    public boolean isGrey() {
        return red_pct == green_pct && green_pct == blue_pct;
    }

    /** All patches in rows of so many. */
    static List<Patch> block(Point corner, int inARow) {
        List<int[]> colours = new ArrayList<>();
        for (int grey_pct : GREYS_PCT) {
            colours.add(new int[] {grey_pct, grey_pct, grey_pct});
        }
        colours.addAll(List.of(COLOURS_PCT));
        List<Patch> patches = new ArrayList<>();
        for (int n = 0; n < colours.size(); n++) {
            double x_mm = corner.x_mm() + n % inARow * PITCH_MM;
            int row = n / inARow;
            double y_mm = corner.y_mm() + row * PITCH_MM;
            int[] colour = colours.get(n);
            patches.add(new Patch(new Rectangle(x_mm, y_mm, SIDE_MM, SIDE_MM), colour[0], colour[1], colour[2]));
        }
        return List.copyOf(patches);
    }
}
