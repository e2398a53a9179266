package afterlength.workshop.setup;

import afterlength.craft.setup.CrossPoint;
import afterlength.workshop.desk.DecimalText;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A maker's own crown as it was typed or pasted: one point a line, across and up in millimetres from bass to treble, or the path of
 * a drawing ({@link SvgPath}). Two numbers of a line stand apart by a semicolon, a tab or blanks; by a comma only where the line
 * has none of these. A first line of words is a heading and left out.
 *
 * @param points empty when nothing was typed or it cannot be read
 * @param problem what is wrong, or null
 */
record TemplateText(List<CrossPoint> points, @Nullable String problem) {
    private static final Pattern WORDS = Pattern.compile("[\\p{L}\\s;,_()]+");
    private static final int MOST_POINTS = 2000;

    TemplateText {
        points = List.copyOf(points);
    }

    static TemplateText read(String text) {
        String stripped = text.strip();
        if (stripped.isEmpty()) {
            return new TemplateText(List.of(), null);
        }
        return SvgPath.looksLike(stripped) ? SvgPath.read(stripped) : points(stripped);
    }

    static TemplateText wrong(String problem) {
        return new TemplateText(List.of(), problem);
    }

    private static TemplateText points(String text) {
        List<CrossPoint> points = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int n = 0; n < lines.size(); n++) {
            String line = lines.get(n).strip();
            if (line.isEmpty() || (n == 0 && WORDS.matcher(line).matches())) {
                continue;
            }
            @Nullable CrossPoint point = point(line);
            if (point == null) {
                return wrong(
                        "Line " + (n + 1) + " of the template is “" + shortened(line)
                                + "”; it must be two numbers in millimetres, across and up, such as −16.5; 2.4. Write it anew.");
            }
            points.add(point);
        }
        return points.size() <= MOST_POINTS
                ? new TemplateText(points, null)
                : wrong("The template has " + points.size() + " points; at most " + MOST_POINTS
                        + " are read. Leave out every second one.");
    }

    private static @Nullable CrossPoint point(String line) {
        String[] parts = line.contains(";")
                ? line.split("\\s*;\\s*", -1)
                : line.contains(" ") || line.contains("\t") ? line.split("\\s*,\\s+|\\s+", -1) : line.split(",", -1);
        if (parts.length != 2) {
            return null;
        }
        OptionalDouble across = DecimalText.read(parts[0]);
        OptionalDouble up = DecimalText.read(parts[1]);
        return across.isPresent() && up.isPresent() ? new CrossPoint(across.getAsDouble(), up.getAsDouble()) : null;
    }

    static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    /** Points as they are typed, to a hundredth of a millimetre. */
    static String written(List<CrossPoint> points) {
        return points.stream()
                .map(point -> hundredths(point.y_mm()) + "; " + hundredths(point.z_mm()))
                .collect(Collectors.joining("\n"));
    }

    private static String hundredths(double value_mm) {
        return Figures.typed(Math.rint(value_mm * 100) / 100);
    }
}
