package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A mark as the SVG that a W3C Web Annotation carries (Web Annotation Data Model, SVG selector): an open line, a closed outline,
 * or a small circle around a point. Coordinates keep a hundredth of a pixel.
 */
final class SvgSelector {
    private static final String OPENING = "<svg xmlns=\"http://www.w3.org/2000/svg\">";
    private static final Pattern POINTS = Pattern.compile(" points=\"([^\"]*)\"");
    private static final Pattern CENTRE = Pattern.compile(" cx=\"([^\"]*)\" cy=\"([^\"]*)\"");
    private static final int DECIMALS = 2;

    private SvgSelector() {}

    static String of(MarkTool tool, List<Pixel> points) {
        return OPENING + element(tool, points) + "</svg>";
    }

    private static String element(MarkTool tool, List<Pixel> points) {
        return switch (tool.kind()) {
            case LINE -> "<polyline points=\"" + text(points) + "\" fill=\"none\"/>";
            case AREA -> "<polygon points=\"" + text(points) + "\"/>";
            case POINT -> {
                Pixel at = points.get(0);
                yield "<circle cx=\"" + number(at.x()) + "\" cy=\"" + number(at.y()) + "\" r=\"3\"/>";
            }
        };
    }

    static List<Pixel> points(String selector) {
        Matcher line = POINTS.matcher(selector);
        if (line.find()) {
            List<Pixel> points = new ArrayList<>();
            for (String pair : line.group(1).split(" ", -1)) {
                int comma = pair.indexOf(',');
                points.add(new Pixel(
                        Double.parseDouble(pair.substring(0, comma)), Double.parseDouble(pair.substring(comma + 1))));
            }
            return points;
        }
        Matcher centre = CENTRE.matcher(selector);
        if (centre.find()) {
            return List.of(new Pixel(Double.parseDouble(centre.group(1)), Double.parseDouble(centre.group(2))));
        }
        throw new IllegalArgumentException("no points in the selector " + selector);
    }

    /** As the attribute of an SVG element wants them: "10,20 30.5,40". */
    static String text(List<Pixel> points) {
        return points.stream().map(at -> number(at.x()) + "," + number(at.y())).collect(Collectors.joining(" "));
    }

    private static String number(double value) {
        return Figures.typed(Math.round(value * Math.pow(10, DECIMALS)) / Math.pow(10, DECIMALS));
    }
}
