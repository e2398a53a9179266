package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A picture in millimetres: marks in the order they are laid down, x to the right, y upwards. Player's view of the front, bass
 * left, wherever an instrument is drawn. It never changes; {@link Sketch} makes one, {@link SvgPen} and {@link PdfPen} draw it.
 *
 * @param title what it shows, in a few words
 * @param description the same for someone who cannot see it, with the figures that matter
 */
public record Drawing(String title, String description, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException("the drawing '" + title + "' has nothing on it");
        }
    }

    public Bounds bounds() {
        return shapes.stream().map(Shape::bounds).reduce(Bounds::and).orElseThrow();
    }

    public Drawing moved(double right_mm, double up_mm) {
        return new Drawing(
                title,
                description,
                shapes.stream().map(shape -> shape.moved(right_mm, up_mm)).toList());
    }

    /** This with the other laid over it; title and description stay. */
    public Drawing with(Drawing other) {
        List<Shape> both = new ArrayList<>(shapes);
        both.addAll(other.shapes);
        return new Drawing(title, description, both);
    }
}
