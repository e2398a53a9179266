package afterlength.workshop.desk;

import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A sheet on which a drawing is inked line by line, and which then becomes one SVG element. */
final class InkSheet {
    /** A washed tone for what lies deep or dark; far too faint to carry meaning. */
    private static final String WASH_OPACITY = ".13";

    private final double step_mm;
    private final StringBuilder wash = new StringBuilder();
    private final StringBuilder ink = new StringBuilder();
    private final List<Point> extent = new ArrayList<>();

    /** The step says how finely curves are followed. */
    InkSheet(double step_mm) {
        this.step_mm = step_mm;
    }

    InkSheet edge(Outline outline, Pen pen) {
        extent.addAll(outline.points());
        ink.append(InkStroke.closed(outline.points(), pen));
        return this;
    }

    InkSheet edge(Curve curve, Pen pen) {
        return edge(curve.outline(step_mm), pen);
    }

    InkSheet line(List<Point> line, Pen pen) {
        extent.addAll(line);
        ink.append(InkStroke.open(line, pen));
        return this;
    }

    InkSheet line(Curve curve, Pen pen) {
        return line(finely(curve.points(step_mm)), pen);
    }

    InkSheet lines(List<List<Point>> lines, Pen pen) {
        lines.forEach(line -> line(finely(line), pen));
        return this;
    }

    /** A line of even breadth, like a string. */
    InkSheet thread(Curve curve, double breadth_mm) {
        ink.append(InkStroke.even(curve.points(step_mm), breadth_mm));
        return this;
    }

    InkSheet washed(Curve curve) {
        wash.append(
                PathText.closed(curve.outline(step_mm).simplified(step_mm / 50).points()));
        return this;
    }

    String svg() {
        return opening() + " aria-hidden=\"true\">" + paths() + "</svg>";
    }

    String svg(String title) {
        return opening() + " role=\"img\"><title>" + escaped(title) + "</title>" + paths() + "</svg>";
    }

    private String opening() {
        double left = extent.stream().mapToDouble(Point::x_mm).min().orElse(0);
        double right = extent.stream().mapToDouble(Point::x_mm).max().orElse(0);
        double top = extent.stream().mapToDouble(Point::y_mm).min().orElse(0);
        double bottom = extent.stream().mapToDouble(Point::y_mm).max().orElse(0);
        double margin = 1 + 0.01 * (bottom - top);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"instrument-drawing\" viewBox=\"%d %d %d %d\""
                .formatted(
                        (long) Math.floor(left - margin),
                        (long) Math.floor(top - margin),
                        (long) Math.ceil(right - left + 2 * margin),
                        (long) Math.ceil(bottom - top + 2 * margin));
    }

    private String paths() {
        String inked = "<path fill=\"currentColor\" d=\"" + ink + "\"/>";
        return wash.isEmpty()
                ? inked
                : "<path fill=\"currentColor\" fill-opacity=\"" + WASH_OPACITY + "\" d=\"" + wash + "\"/>" + inked;
    }

    /** Straight runs get points between their ends, so that a stroke can swell and taper along them. */
    private List<Point> finely(List<Point> line) {
        List<Point> fine = new ArrayList<>(List.of(line.get(0)));
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            int count = (int) Math.ceil(from.distanceTo_mm(line.get(i)) / (4 * step_mm));
            for (int k = 1; k <= count; k++) {
                fine.add(from.towards(line.get(i), (double) k / count));
            }
        }
        return fine;
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
