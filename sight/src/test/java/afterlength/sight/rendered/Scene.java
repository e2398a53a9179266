package afterlength.sight.rendered;

import afterlength.sight.camera.Lens;
import afterlength.sight.camera.Turn;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;

/**
 * A photograph to be made.
 *
 * @param view the true camera over the card as printed
 * @param across how many times broader the printer made the card, likewise along
 * @param spread_mm how far ink runs beyond its edge
 * @param blur_px one standard deviation
 * @param noise in steps of the file's 256, one standard deviation
 * @param shadow share of light that a soft shadow across the card takes away
 * @param quality of the JPEG, 0 to 1
 */
public record Scene(
        Card card,
        View view,
        int width_px,
        int height_px,
        double across,
        double along,
        double spread_mm,
        double blur_px,
        double noise,
        double shadow,
        double quality) {
    public static final double FOCAL_SHARE = 3028 / 4032.0;

    /** A usual telephone straight or slanted over the middle of what is to be measured, everything else at its best. */
    public static Scene of(Card card, int width_px, Camera camera) {
        int height_px = width_px * 3 / 4;
        return new Scene(card, camera.view(width_px, height_px), width_px, height_px, 1, 1, 0.02, 0.8, 1.5, 0.2, 0.92);
    }

    public Scene blurred(double blur_px) {
        return new Scene(card, view, width_px, height_px, across, along, spread_mm, blur_px, noise, shadow, quality);
    }

    /**
     * Where the camera stands: slanted by a tilt towards an azimuth, rolled about its axis, so far from the point of the card's
     * plane it looks at.
     */
    public record Camera(
            double focalShare,
            double k1,
            double centreX_px,
            double centreY_px,
            double tilt_deg,
            double azimuth_deg,
            double roll_deg,
            double distance_mm,
            double lookX_mm,
            double lookY_mm) {
        public static Camera over(Card card, double tilt_deg, double azimuth_deg, double distance_mm) {
            return new Camera(
                    FOCAL_SHARE,
                    0,
                    0,
                    0,
                    tilt_deg,
                    azimuth_deg,
                    90,
                    distance_mm,
                    card.width_mm() / 2,
                    card.height_mm() / 2);
        }

        View view(int width_px, int height_px) {
            double azimuth = Math.toRadians(azimuth_deg);
            double tilt = Math.toRadians(tilt_deg);
            Turn slant = Turn.around(Math.cos(azimuth) * tilt, Math.sin(azimuth) * tilt, 0);
            Turn turn = Turn.around(0, 0, Math.toRadians(roll_deg)).after(slant);
            double[] look = turn.applied(lookX_mm, lookY_mm, 0);
            Lens lens = new Lens(focalShare * width_px, k1, width_px / 2.0 + centreX_px, height_px / 2.0 + centreY_px);
            return new View(lens, turn, new double[] {-look[0], -look[1], distance_mm - look[2]});
        }
    }
}
