package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;
import afterlength.sight.measure.MeasuredPhoto;

/**
 * Which part of the card's plane a rectified picture shows, and how finely: what the photograph shows of it, to one and a half lengths of
 * the card round the card, as finely as the photograph itself but never with more than twelve million pixels.
 *
 * @param corner the place on the card's axes of the upper left corner; x right, y down
 * @param height_mm of the plane over the card; what lies at other heights is drawn out of place
 */
public record FlatSheet(long photographId, Point corner, Point opposite, double height_mm, double px_mm) {
    private static final double AROUND_CARD_LENGTHS = 1.5;
    private static final double FINEST_PX_MM = 12;
    private static final double MOST_PIXELS = 12e6;
    /** The edge of the photograph is followed at so many places a side. */
    private static final int PLACES = 16;

    static FlatSheet of(long photographId, MeasuredPhoto photo, double height_mm) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        Card card = photo.card();
        double around_mm = AROUND_CARD_LENGTHS * card.longestSide_mm();
        for (int n = 0; n < 4 * PLACES; n++) {
            Point place = edgePlace(photo, n, height_mm, around_mm);
            low[0] = Math.min(low[0], clamped(place.x_mm(), card.width_mm(), around_mm));
            low[1] = Math.min(low[1], clamped(place.y_mm(), card.height_mm(), around_mm));
            high[0] = Math.max(high[0], clamped(place.x_mm(), card.width_mm(), around_mm));
            high[1] = Math.max(high[1], clamped(place.y_mm(), card.height_mm(), around_mm));
        }
        Point corner = Point.of(Math.floor(low[0]), Math.floor(low[1]));
        Point opposite = Point.of(Math.ceil(high[0]), Math.ceil(high[1]));
        View view = photo.fitted().view();
        double seen_px_mm = view.lens().focal_px() / view.cameraHeight_mm();
        double area_mm2 = (opposite.x_mm() - corner.x_mm()) * (opposite.y_mm() - corner.y_mm());
        double fine_px_mm = Math.min(Math.min(seen_px_mm, FINEST_PX_MM), Math.sqrt(MOST_PIXELS / area_mm2));
        return new FlatSheet(photographId, corner, opposite, height_mm, Math.round(fine_px_mm * 100) / 100.0);
    }

    private static Point edgePlace(MeasuredPhoto photo, int n, double height_mm, double around_mm) {
        double along = n % PLACES / (double) PLACES;
        double width = photo.width_px();
        double height = photo.height_px();
        Pixel pixel = switch (n / PLACES) {
            case 0 -> new Pixel(along * width, 0);
            case 1 -> new Pixel(width, along * height);
            case 2 -> new Pixel((1 - along) * width, height);
            default -> new Pixel(0, (1 - along) * height);
        };
        View view = photo.fitted().view();
        return view.meets(pixel, height_mm) ? view.place(pixel, height_mm) : Point.of(-around_mm, -around_mm);
    }

    private static double clamped(double value, double card_mm, double around_mm) {
        return Math.max(-around_mm, Math.min(card_mm + around_mm, value));
    }

    public double width_mm() {
        return opposite.x_mm() - corner.x_mm();
    }

    public double length_mm() {
        return opposite.y_mm() - corner.y_mm();
    }

    /** Where the picture is served. */
    public String address() {
        return "/photographs/" + photographId + "/flat.jpg?height_mm=" + height_mm;
    }
}
