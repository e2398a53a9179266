package afterlength.workshop.paper;

import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Draws as SVG with one user unit to the millimetre, y turned downwards. Numbers are rounded to the micrometre.
 *
 * <p>For the screen each mark carries the class of its ink ({@code class="accent"}) and takes the current colour, so a style
 * sheet decides light or dark and no inline style is needed. For paper, or a cutter, every mark has its colour in itself.
 */
public final class SvgPen {
    /** Keeps half the broadest line inside the picture. */
    private static final double MARGIN_MM = 1;

    private final boolean forScreen;
    private final double left_mm;
    private final double top_mm;
    private final StringBuilder svg = new StringBuilder();

    private SvgPen(boolean forScreen, Bounds view) {
        this.forScreen = forScreen;
        this.left_mm = view.left_mm();
        this.top_mm = view.top_mm();
    }

    public static String forScreen(Drawing drawing) {
        return draw(drawing, true);
    }

    public static String forPaper(Drawing drawing) {
        return draw(drawing, false);
    }

    private static String draw(Drawing drawing, boolean forScreen) {
        Bounds view = drawing.bounds().grown(MARGIN_MM);
        SvgPen pen = new SvgPen(forScreen, view);
        pen.open(drawing, view);
        drawing.shapes().forEach(pen::put);
        return pen.svg.append("</svg>\n").toString();
    }

    private void open(Drawing drawing, Bounds view) {
        String width = number(view.width_mm());
        String height = number(view.height_mm());
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" aria-label=\"%s\""
                .formatted(escape(drawing.title())));
        svg.append(" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\">\n".formatted(width, height, width, height));
        svg.append("<title>%s</title>\n<desc>%s</desc>\n"
                .formatted(escape(drawing.title()), escape(drawing.description())));
    }

    private void put(Shape shape) {
        if (shape instanceof StraightLine line) {
            open("line", "x1", x(line.from()), "y1", y(line.from()), "x2", x(line.to()), "y2", y(line.to()));
            stroke(line.stroke());
        } else if (shape instanceof Outline outline) {
            put(outline);
        } else if (shape instanceof Circle circle) {
            put(circle);
        } else if (shape instanceof Words words) {
            put(words);
        }
    }

    private void put(Outline outline) {
        String name = outline.closed() ? "polygon" : "polyline";
        String points = outline.points().stream()
                .map(point -> x(point) + "," + y(point))
                .collect(Collectors.joining(" "));
        if (outline.fill() != null) {
            open("polygon", "points", points);
            fill(outline.fill());
        }
        if (outline.stroke() != null) {
            open(name, "points", points);
            stroke(outline.stroke());
        }
    }

    private void put(Circle circle) {
        String radius = number(circle.radius_mm());
        if (circle.fill() != null) {
            open("circle", "cx", x(circle.centre()), "cy", y(circle.centre()), "r", radius);
            fill(circle.fill());
        }
        if (circle.stroke() != null) {
            open("circle", "cx", x(circle.centre()), "cy", y(circle.centre()), "r", radius);
            stroke(circle.stroke());
        }
    }

    private void put(Words words) {
        open("text", "x", x(words.at()), "y", y(words.at()));
        if (words.turn_deg() != 0) {
            attribute(
                    "transform", "rotate(%s %s %s)".formatted(number(-words.turn_deg()), x(words.at()), y(words.at())));
        }
        Face face = words.face();
        attribute("font-family", face.family() + ", " + Face.SYMBOLS.family() + ", sans-serif");
        attribute("font-size", number(words.size_mm()));
        attribute("font-weight", weight(face));
        if (face.italic()) {
            attribute("font-style", "italic");
        }
        attribute("text-anchor", words.anchor().name().toLowerCase(Locale.ROOT));
        colour(words.ink(), "fill");
        svg.append('>').append(escape(Lettering.writable(face, words.words()))).append("</text>\n");
    }

    /** On paper the strong face is called bold, the one word for it that every reader of SVG knows. */
    private String weight(Face face) {
        return face.weight() > 400 && !forScreen ? "700" : Integer.toString(face.weight());
    }

    private void open(String name, String... namesAndValues) {
        svg.append('<').append(name);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            attribute(namesAndValues[i], namesAndValues[i + 1]);
        }
    }

    private void stroke(Stroke stroke) {
        attribute("fill", "none");
        colour(stroke.ink(), "stroke");
        attribute("stroke-width", number(stroke.width_mm()));
        attribute("stroke-linecap", stroke.dash_mm().isEmpty() ? "round" : "butt");
        attribute("stroke-linejoin", "round");
        if (!stroke.dash_mm().isEmpty()) {
            String dashes = stroke.dash_mm().stream().map(SvgPen::number).collect(Collectors.joining(" "));
            attribute("stroke-dasharray", dashes);
        }
        svg.append("/>\n");
    }

    private void fill(Ink ink) {
        colour(ink, "fill");
        svg.append("/>\n");
    }

    private void colour(Ink ink, String role) {
        if (forScreen) {
            attribute("class", ink.cssClass());
            attribute(role, "currentColor");
        } else {
            attribute(role, ink.hex());
        }
    }

    private void attribute(String name, String value) {
        svg.append(' ').append(name).append("=\"").append(value).append('"');
    }

    private String x(Point point) {
        return number(point.x_mm() - left_mm);
    }

    private String y(Point point) {
        return number(top_mm - point.y_mm());
    }

    private static String number(double value) {
        long micrometres = Math.round(value * 1000);
        long whole = Math.abs(micrometres) / 1000;
        long rest = Math.abs(micrometres) % 1000;
        String figure = (micrometres < 0 ? "-" : "") + whole;
        return rest == 0 ? figure : figure + decimals(rest);
    }

    /** A drawing has thousands of numbers and is drawn anew while a hand drags, so they are put together by hand. */
    private static String decimals(long rest) {
        int digits = rest % 100 == 0 ? 1 : rest % 10 == 0 ? 2 : 3;
        String padded = Long.toString(1000 + rest);
        return "." + padded.substring(1, 1 + digits);
    }

    private static String escape(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
