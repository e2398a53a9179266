package afterlength.sight.rendered;

import afterlength.sight.camera.Lens;
import afterlength.sight.camera.Turn;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;
import afterlength.sight.picture.CameraNotes;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * One invented camera with its own lens, which takes many pictures: focused anew for each as a thin lens would be, and its
 * stabiliser leaves the axis some pixels aside.
 */
public final class RenderedCamera {
    /** What it notes as its focal length. */
    public static final double FOCAL_MM = 5.5;

    private static final double ASIDE_PX = 2;
    private static final double NEAREST_MM = 40;

    private final String name;
    private final int width_px;
    private final int height_px;
    private final Lens lens;
    private final SplittableRandom random;

    /** The lens is drawn by chance: focal length, k1, axis beside the middle. */
    public RenderedCamera(String name, int width_px, long seed) {
        this.name = name;
        this.width_px = width_px;
        this.height_px = width_px * 3 / 4;
        random = new SplittableRandom(seed);
        double edge = width_px / 4032.0;
        lens = new Lens(
                (0.70 + 0.10 * random.nextDouble()) * width_px,
                -0.02 + 0.04 * random.nextDouble(),
                width_px / 2.0 + 6 * edge * random.nextGaussian(),
                height_px / 2.0 + 6 * edge * random.nextGaussian());
    }

    public Lens lens() {
        return lens;
    }

    /** Focused on a distance: f / (1 − f / Z) behind the lens. */
    private Lens focused(double distance_mm) {
        double share = 1 / (1 - FOCAL_MM / Math.max(NEAREST_MM, distance_mm));
        return new Lens(
                lens.focal_px() * share,
                lens.k1(),
                lens.centreX_px() + ASIDE_PX * random.nextGaussian(),
                lens.centreY_px() + ASIDE_PX * random.nextGaussian());
    }

    /** A picture with the middle of the card so far right of and below the axis, seen slanted from this distance. */
    public Scene scene(Card card, Stand stand) {
        double tilt = Math.toRadians(stand.tilt_deg());
        double around = Math.toRadians(stand.around_deg());
        Turn turn = Turn.around(0, 0, Math.toRadians(stand.roll_deg()))
                .after(Turn.around(Math.cos(around) * tilt, Math.sin(around) * tilt, 0));
        double[] middle = turn.applied(card.width_mm() / 2, card.height_mm() / 2, 0);
        double[] shift = {stand.right_mm() - middle[0], stand.down_mm() - middle[1], stand.distance_mm() - middle[2]};
        View view = new View(focused(stand.distance_mm()), turn, shift);
        return new Scene(card, view, width_px, height_px, 1, 1, 0.02, 0.8, 1.5, 0.2, 0.92);
    }

    /** Where the camera stands over the middle of the card. */
    public record Stand(
            double right_mm, double down_mm, double distance_mm, double tilt_deg, double around_deg, double roll_deg) {}

    /** The body card in the middle and towards each corner of the picture, the camera slanted, for a calibration. */
    public static Stand[] allOver(int pictures) {
        Stand[] places = {
            new Stand(0, 0, 560, 30, 10, 90),
            new Stand(-190, -140, 560, 30, 80, 90),
            new Stand(190, -140, 560, 30, 150, 90),
            new Stand(190, 140, 560, 30, 220, -90),
            new Stand(-190, 140, 560, 30, 300, 90),
            new Stand(20, 10, 460, 25, 190, 90),
            new Stand(-30, 20, 500, 35, 260, 90)
        };
        return Arrays.copyOf(places, pictures);
    }

    /** The file of a picture, the camera held level. */
    public byte[] jpeg(Scene scene, long seed) {
        return Jpeg.noted(Renderer.jpeg(scene, seed), notes(), 1);
    }

    /** Its notes: the focal length for a whole frame rounded to a millimetre. */
    public CameraNotes notes() {
        double focal35_mm = lens.focal_px() / Math.hypot(width_px, height_px) * Math.hypot(36, 24);
        return new CameraNotes(name, "", FOCAL_MM, Math.round(focal35_mm), width_px, height_px, 1);
    }
}
