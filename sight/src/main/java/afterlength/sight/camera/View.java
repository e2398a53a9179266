package afterlength.sight.camera;

import afterlength.craft.geometry.Point;

/**
 * A camera over a card. Places lie on the card's axes (x right, y down, millimetres); height counts from the card towards the
 * camera. A ray is X_camera = R X_card + t with z along the axis of the lens.
 *
 * <p>What stands at height h over the card and is read as lying in it comes out too long by h/(Z − h), Z being the height of the
 * lens, in tilted views too (docs/sources.md#photo-study); therefore every question here wants a height.
 */
public final class View {
    /** A ray 3 degrees above the plane: nothing is measured there. */
    private static final double FLATTEST = 0.05;

    private final Lens lens;
    private final Turn turn;
    private final double[] shift_mm;

    /** A camera that sees the corner of the card at this shift: x, y and depth. */
    public View(Lens lens, Turn turn, double[] shift_mm) {
        this.lens = lens;
        this.turn = turn;
        this.shift_mm = shift_mm.clone();
    }

    public Lens lens() {
        return lens;
    }

    /** Where a place at a height over the card appears. */
    public Pixel pixel(Point place, double height_mm) {
        double[] seen = turn.applied(place.x_mm(), place.y_mm(), -height_mm);
        double depth_mm = seen[2] + shift_mm[2];
        return lens.pixel((seen[0] + shift_mm[0]) / depth_mm, (seen[1] + shift_mm[1]) / depth_mm);
    }

    /** The place at a height over the card that appears at a pixel. */
    public Point place(Pixel pixel, double height_mm) {
        double[] tangent = lens.ray(pixel);
        double[] eye = eye_mm();
        double[] ray = turn.undone(tangent[0], tangent[1], 1);
        double way = (-height_mm - eye[2]) / ray[2];
        return Point.of(eye[0] + way * ray[0], eye[1] + way * ray[1]);
    }

    /** Whether the ray through this pixel meets the plane at this height in front of the camera, not above the horizon. */
    public boolean meets(Pixel pixel, double height_mm) {
        double[] tangent = lens.ray(pixel);
        double rayDown = turn.undone(tangent[0], tangent[1], 1)[2];
        return rayDown > FLATTEST && height_mm < cameraHeight_mm();
    }

    private double[] eye_mm() {
        return turn.undone(-shift_mm[0], -shift_mm[1], -shift_mm[2]);
    }

    /** Height of the lens above the plane of the card. */
    public double cameraHeight_mm() {
        return -eye_mm()[2];
    }

    /** From the lens along its axis to the plane of the card; what the lens is focused on. */
    public double axisDistance_mm() {
        return cameraHeight_mm() / turn.applied(0, 0, 1)[2];
    }

    /** Angle between the axis of the lens and the upright on the card. */
    public double tilt_deg() {
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, turn.applied(0, 0, 1)[2]))));
    }
}
