package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A drawing in the making: every call lays one mark over those before it. */
public final class Sketch {
    private final List<Shape> shapes = new ArrayList<>();

    public Sketch line(Point from, Point to, Stroke stroke) {
        return put(new StraightLine(from, to, stroke));
    }

    public Sketch curve(List<Point> points, Stroke stroke) {
        return put(new Outline(points, false, stroke, null));
    }

    public Sketch area(List<Point> points, @Nullable Stroke stroke, @Nullable Ink fill) {
        return put(new Outline(points, true, stroke, fill));
    }

    public Sketch circle(Point centre, double radius_mm, Stroke stroke) {
        return put(new Circle(centre, radius_mm, stroke, null));
    }

    public Sketch disc(Point centre, double radius_mm, @Nullable Stroke stroke, Ink fill) {
        return put(new Circle(centre, radius_mm, stroke, fill));
    }

    public Sketch words(String words, Point at, double size_mm, Anchor anchor, Face face, Ink ink) {
        return put(new Words(words, at, size_mm, anchor, 0, face, ink));
    }

    public Sketch turnedWords(
            String words, Point at, double size_mm, Anchor anchor, double turn_deg, Face face, Ink ink) {
        return put(new Words(words, at, size_mm, anchor, turn_deg, face, ink));
    }

    /** Lays bare paper under the words first, so that they can stand on a line. */
    public Sketch wordsOnPaper(Words words) {
        Bounds room = words.bounds().grown(words.size_mm() * 0.18);
        List<Point> corners = List.of(
                new Point(room.left_mm(), room.bottom_mm()),
                new Point(room.right_mm(), room.bottom_mm()),
                new Point(room.right_mm(), room.top_mm()),
                new Point(room.left_mm(), room.top_mm()));
        return area(corners, null, Ink.PAPER).put(words);
    }

    public Sketch put(Shape shape) {
        shapes.add(shape);
        return this;
    }

    public Sketch putAll(List<? extends Shape> more) {
        shapes.addAll(more);
        return this;
    }

    public Sketch put(Drawing drawing) {
        return putAll(drawing.shapes());
    }

    public Drawing drawing(String title, String description) {
        return new Drawing(title, description, shapes);
    }
}
