package afterlength.sight.camera;

/**
 * A lens: pinhole with square pixels and one coefficient of distortion, r′ = r (1 + k1 r²), r being the tangent of the angle to
 * the axis. Higher coefficients, a tilted sensor and the rolling of the shutter are left out; what a telephone leaves of them
 * after its own correction shows in the residual of the fit.
 *
 * @param focal_px focal length in pixels
 * @param centreX_px where the axis meets the picture
 */
public record Lens(double focal_px, double k1, double centreX_px, double centreY_px) {
    private static final int MOST_STEPS = 50;

    /** Below a millionth of a pixel at any focal length. */
    private static final double CLOSE_ENOUGH = 1e-12;

    /** Where a ray (x/z, y/z) meets the picture. */
    Pixel pixel(double tangentX, double tangentY) {
        double bend = 1 + k1 * (tangentX * tangentX + tangentY * tangentY);
        return new Pixel(centreX_px + focal_px * bend * tangentX, centreY_px + focal_px * bend * tangentY);
    }

    /** The ray through a pixel as (x/z, y/z): the radius is solved by Newton's steps, the direction stays. */
    double[] ray(Pixel pixel) {
        double x = (pixel.x() - centreX_px) / focal_px;
        double y = (pixel.y() - centreY_px) / focal_px;
        double bent = Math.hypot(x, y);
        if (bent == 0) {
            return new double[] {0, 0};
        }
        double share = straight(bent) / bent;
        return new double[] {x * share, y * share};
    }

    private double straight(double bent) {
        double radius = bent;
        for (int step = 0; step < MOST_STEPS; step++) {
            double slope = 1 + 3 * k1 * radius * radius;
            double change = (radius * (1 + k1 * radius * radius) - bent) / slope;
            radius -= change;
            if (Math.abs(change) < CLOSE_ENOUGH) {
                break;
            }
        }
        return radius;
    }
}
