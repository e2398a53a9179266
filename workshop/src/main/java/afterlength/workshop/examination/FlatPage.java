package afterlength.workshop.examination;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A photograph as if taken from straight above, under a grid of millimetres.
 *
 * @param sheet null while the card is looked for, or when none was found
 * @param card what is said of the card then
 */
record FlatPage(
        Frame frame, Photograph photograph, @Nullable FlatSheet sheet, CardLine card) {
    private static final int GRID_MM = 10;
    private static final int STRONG_MM = 50;

    /** Heights to choose from; the address takes any from 0 to 60 mm. */
    static final List<Choice> HEIGHTS = List.of(
            new Choice("0", "the card's own plane, or the edge with the card laid at its height"),
            new Choice("8", "half way up the arch, 8 mm"),
            new Choice("15", "top of the arch, 15 mm"));

    /** One line of the grid. */
    record Line(double x1, double y1, double x2, double y2, boolean strong, String words) {}

    boolean isChosen(Choice height) {
        return sheet != null && Double.parseDouble(height.value()) == sheet.height_mm();
    }

    String viewBox() {
        return sheet == null
                ? ""
                : number(sheet.corner().x_mm()) + " " + number(sheet.corner().y_mm()) + " " + number(sheet.width_mm())
                        + " " + number(sheet.length_mm());
    }

    List<Line> grid() {
        List<Line> lines = new ArrayList<>();
        FlatSheet whole = sheet;
        if (whole != null) {
            double left = whole.corner().x_mm();
            double top = whole.corner().y_mm();
            double right = whole.opposite().x_mm();
            double bottom = whole.opposite().y_mm();
            for (int x = upTo(left); x <= right; x += GRID_MM) {
                lines.add(new Line(x, top, x, bottom, x % STRONG_MM == 0, Integer.toString(x)));
            }
            for (int y = upTo(top); y <= bottom; y += GRID_MM) {
                lines.add(new Line(left, y, right, y, y % STRONG_MM == 0, Integer.toString(y)));
            }
        }
        return lines;
    }

    private static int upTo(double value) {
        return (int) Math.ceil(value / GRID_MM) * GRID_MM;
    }

    static String number(double value) {
        return Figures.typed(value);
    }

    String words() {
        return sheet == null
                ? ""
                : "A square of the grid is 10 mm, a strong line 50 mm, counted from the upper left corner of the card; "
                        + Figures.plain(sheet.px_mm()) + " pixels to the millimetre, in the plane "
                        + Figures.plain(sheet.height_mm()) + " mm over the card.";
    }
}
