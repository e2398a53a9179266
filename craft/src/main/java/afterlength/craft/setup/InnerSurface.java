package afterlength.craft.setup;

import afterlength.craft.units.Angle;

/**
 * The inside of a plate on the axis of the post. It lies one thickness square beneath the outside, so on a sloping plate the point
 * over the axis is not the point beneath it: the foot of the normal is found by a few steps, each a thickness times the slope.
 *
 * @param height_mm over the gluing plane, away from the inside of the body
 * @param slopeAlong rise to the tail per millimetre
 * @param slopeAcross rise to the treble side per millimetre
 */
record InnerSurface(
        double height_mm, double slopeAlong, double slopeAcross, double heightError_mm, double slopeError_rad) {
    private static final int STEPS = 20;

    /** For a plate that {@link PostChecks} found possible. */
    static InnerSurface of(Plate plate, PostErrors errors) {
        if (plate.surface() instanceof PlateSurface.Sloped sloped) {
            return of(plane(sloped), plate.thickness_mm(), errors, Math.toRadians(errors.slope_deg()));
        }
        PlateSurface.Heights heights = (PlateSurface.Heights) plate.surface();
        Paraboloid outside = Paraboloid.find(heights.points()).orElseThrow();
        return of(outside, plate.thickness_mm(), errors, errors.height_mm() * outside.slopeSpread());
    }

    private static Paraboloid plane(PlateSurface.Sloped sloped) {
        double along = Math.tan(Math.toRadians(sloped.slopeAlong_deg()));
        double across = Math.tan(Math.toRadians(sloped.slopeAcross_deg()));
        return new Paraboloid(sloped.height_mm(), along, across, 0, 0, 0, 1, 0);
    }

    private static InnerSurface of(Paraboloid outside, double thickness_mm, PostErrors errors, double slopeError_rad) {
        double x_mm = 0;
        double y_mm = 0;
        double steep = 1;
        for (int i = 0; i < STEPS; i++) {
            double along = outside.slopeAlong(x_mm, y_mm);
            double across = outside.slopeAcross(x_mm, y_mm);
            steep = Math.sqrt(1 + along * along + across * across);
            x_mm = -thickness_mm * along / steep;
            y_mm = -thickness_mm * across / steep;
        }
        return new InnerSurface(
                outside.height_mm(x_mm, y_mm) - thickness_mm / steep,
                outside.slopeAlong(x_mm, y_mm),
                outside.slopeAcross(x_mm, y_mm),
                Math.hypot(errors.height_mm() * outside.heightSpread(), errors.thickness_mm()),
                slopeError_rad);
    }

    PostEnd end() {
        return new PostEnd(
                Angle.ofRad(Math.atan(slopeAlong)), Angle.ofRad(Math.atan(slopeAcross)), Angle.ofRad(slopeError_rad));
    }
}
