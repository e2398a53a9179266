package afterlength.sight.camera;

/** A place in the upright picture; (0, 0) is its upper left corner, the centre of the first pixel is (0.5, 0.5). */
public record Pixel(double x, double y) {
    public double distanceTo(Pixel other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
