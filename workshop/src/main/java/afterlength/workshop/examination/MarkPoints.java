package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.DecimalText;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Reads the points of a mark, one a line: "812.5 604". The drawing layer writes them so, and a person may. */
final class MarkPoints {
    static final String FIELD = "points";

    /** A sound-hole traced closely has about a hundred. */
    private static final int MOST = 1000;

    private final Typed typed;
    private final MarkGround ground;

    private MarkPoints(Typed typed, MarkGround ground) {
        this.typed = typed;
        this.ground = ground;
    }

    /** The points, or none where a problem was noted. */
    static List<Pixel> read(Typed typed, MarkGround ground, MarkTool tool) {
        return new MarkPoints(typed, ground).read(tool);
    }

    private List<Pixel> read(MarkTool tool) {
        List<String> lines = typed.raw(FIELD)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        if (lines.isEmpty()) {
            return refused(
                    "There are no points. Tap along what is marked, or write one point a line, such as 812.5 604.");
        }
        if (lines.size() > MOST) {
            return refused("There are " + lines.size() + " points; at most " + MOST + " fit. Set them further apart.");
        }
        List<Pixel> points = new ArrayList<>();
        for (int n = 0; n < lines.size(); n++) {
            String[] numbers = lines.get(n).split("[\\s;]+", -1);
            OptionalDouble x = DecimalText.read(numbers[0]);
            OptionalDouble y = numbers.length == 2 ? DecimalText.read(numbers[1]) : OptionalDouble.empty();
            if (x.isEmpty() || y.isEmpty()) {
                return refused("Line " + (n + 1) + " of the points is “" + shortened(lines.get(n))
                        + "”; write two numbers, such as 812.5 604.");
            }
            points.add(new Pixel(x.getAsDouble(), y.getAsDouble()));
        }
        return placed(points, tool);
    }

    private List<Pixel> placed(List<Pixel> points, MarkTool tool) {
        for (int n = 0; n < points.size(); n++) {
            if (!onGround(points.get(n))) {
                return refused("Point " + (n + 1) + ", "
                        + Figures.plain(points.get(n).x()) + " "
                        + Figures.plain(points.get(n).y()) + ", lies outside the picture; allowed is "
                        + Figures.plain(ground.left()) + " to " + Figures.plain(ground.left() + ground.width())
                        + " across and " + Figures.plain(ground.top()) + " to "
                        + Figures.plain(ground.top() + ground.height()) + " down.");
            }
        }
        int fewest = tool.kind().fewest();
        if (points.size() < fewest) {
            return refused("The " + tool.words() + " has " + Counted.within(points.size(), "point", "points")
                    + "; it needs " + Counted.number(fewest) + " or more. Set another one.");
        }
        return tool == MarkTool.POINT ? points.subList(points.size() - 1, points.size()) : points;
    }

    private boolean onGround(Pixel at) {
        return at.x() >= ground.left()
                && at.y() >= ground.top()
                && at.x() <= ground.left() + ground.width()
                && at.y() <= ground.top() + ground.height();
    }

    private List<Pixel> refused(String why) {
        typed.note(FIELD, why);
        return List.of();
    }

    private static String shortened(String line) {
        return line.length() > 40 ? line.substring(0, 40) + "…" : line;
    }

    /** As the field shows them. */
    static String text(List<Pixel> points) {
        return points.stream()
                .map(at -> Figures.typed(at.x()) + " " + Figures.typed(at.y()))
                .collect(Collectors.joining("\n"));
    }
}
