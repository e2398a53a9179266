package afterlength.workshop.agreement;

import afterlength.craft.geometry.Point;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Points as they are typed or pasted: one a line, x and y in millimetres, parted by a blank, a tab, a semicolon or a comma; a comma
 * between figures is a decimal sign when something else parts x from y. The path of a drawing program with straight pieces only,
 * such as {@code M 3.5 0 L 6 1 Z}, is read as well.
 */
final class TracedPoints {
    static final int MOST = 2000;
    private static final double FURTHEST_MM = 5000;

    private TracedPoints() {}

    /** The points, or none when a problem was noted. */
    static List<Point> read(Typed typed, String name, String label, int least) {
        String text = typed.raw(name).strip();
        List<Point> points = new ArrayList<>();
        String[] lines = isPath(text) ? text.split("(?i)\\s*[MLZ]\\s*") : text.split("\\R");
        for (String line : lines) {
            if (!line.isBlank() && !add(points, line.strip())) {
                String shown = line.strip().length() > 40 ? line.strip().substring(0, 40) + "…" : line.strip();
                typed.note(
                        name,
                        label + " has “" + shown
                                + "”, which is no point. Write x and y in millimetres, such as 12.5 30, one"
                                + " point a line.");
                return List.of();
            }
        }
        if (points.size() < least || points.size() > MOST) {
            typed.note(
                    name,
                    label + " has " + points.size() + " points; allowed is " + least + " to " + MOST
                            + ". Write one point a line.");
            return List.of();
        }
        return points;
    }

    private static boolean isPath(String text) {
        return text.matches("(?is)M[-+0-9.,eMLZ\\s]*");
    }

    private static boolean add(List<Point> points, String line) {
        String[] parts = line.split("[\\s;]+");
        if (parts.length == 1) {
            parts = line.split(",");
        }
        if (parts.length != 2) {
            return false;
        }
        try {
            double x_mm = Double.parseDouble(parts[0].replaceAll(",$", "").replace(',', '.'));
            double y_mm = Double.parseDouble(parts[1].replace(',', '.'));
            boolean near = Math.abs(x_mm) <= FURTHEST_MM && Math.abs(y_mm) <= FURTHEST_MM;
            if (near) {
                points.add(Point.of(x_mm, y_mm));
            }
            return near;
        } catch (NumberFormatException noNumber) {
            return false;
        }
    }

    /** Points that were typed by {@link #typed}, and so can be read. */
    static List<Point> kept(String text) {
        return text.isEmpty() ? List.of() : read(Typed.known(Map.of("kept", text)), "kept", "The line", 1);
    }

    /** One point a line, to a hundredth of a millimetre. */
    static String typed(List<Point> points) {
        return points.stream()
                .map(point -> Figures.typed(Math.round(point.x_mm() * 100) / 100.0) + " "
                        + Figures.typed(Math.round(point.y_mm() * 100) / 100.0))
                .collect(Collectors.joining("\n"));
    }
}
