package afterlength.workshop.retouch;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.View;
import java.util.List;

/** How a photograph and the surface of the instrument go together near a line. */
interface Scale {
    Point place(Pixel pixel);

    Pixel pixel(Point place);

    /** Through the camera that a card in the picture told, at a height over that card. */
    static Scale seen(View view, double height_mm) {
        return new Scale() {
            @Override
            public Point place(Pixel pixel) {
                return view.place(pixel, height_mm);
            }

            @Override
            public Pixel pixel(Point place) {
                return view.pixel(place, height_mm);
            }
        };
    }

    /** By the known length of the line itself, as if seen from straight above. */
    static Scale even(double pixelsPerMm) {
        return new Scale() {
            @Override
            public Point place(Pixel pixel) {
                return Point.of(pixel.x() / pixelsPerMm, pixel.y() / pixelsPerMm);
            }

            @Override
            public Pixel pixel(Point place) {
                return new Pixel(place.x_mm() * pixelsPerMm, place.y_mm() * pixelsPerMm);
            }
        };
    }

    /** The fewest pixels that a millimetre has at any of these places, whichever way it lies. */
    default double fewestPixelsPerMm(List<Point> places) {
        return places.stream()
                .mapToDouble(place -> Math.min(across(place, 0.5, 0), across(place, 0, 0.5)))
                .min()
                .orElseThrow();
    }

    private double across(Point place, double right_mm, double down_mm) {
        Pixel one = pixel(place.plus(-right_mm, -down_mm));
        Pixel other = pixel(place.plus(right_mm, down_mm));
        return Math.hypot(other.x() - one.x(), other.y() - one.y());
    }
}
