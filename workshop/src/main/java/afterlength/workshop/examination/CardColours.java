package afterlength.workshop.examination;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Lab;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Patch;
import afterlength.sight.card.Rectangle;
import afterlength.sight.colour.ColourReading;
import afterlength.sight.colour.PaperLight;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.workshop.desk.Figures;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * What a photograph with a card says about colour: its light, and how its camera drew the patches. Two photographs in which the same
 * sheet was drawn alike show colours alike; what the patches truly are, nobody knows.
 */
record CardColours(PaperLight light, List<Seen> patches) {
    /** A square of this part of a patch is averaged, so that soft edges and bled ink stay outside. */
    private static final double MIDDLE = 0.5;

    /** A patch as it was asked of the printer and as the camera drew it. */
    record Seen(Patch patch, ColourReading reading) {
        String asked() {
            return patch.isGrey()
                    ? "grey " + patch.red_pct() + " %"
                    : patch.red_pct() + " · " + patch.green_pct() + " · " + patch.blue_pct() + " %";
        }

        String drawn() {
            Lab colour = reading.colour();
            return Figures.fixed(colour.lightness(), 1) + "  " + Figures.fixed(colour.a(), 1) + "  "
                    + Figures.fixed(colour.b(), 1);
        }
    }

    static CardColours of(BufferedImage upright, MeasuredPhoto photo) {
        PaperLight light = PaperLight.of(upright, photo);
        return new CardColours(
                light,
                photo.card().patches().stream()
                        .map(patch -> seen(upright, photo, patch, light))
                        .toList());
    }

    private static Seen seen(BufferedImage upright, MeasuredPhoto photo, Patch patch, PaperLight light) {
        Rectangle place = patch.place();
        Pixel middle = pixel(photo, place, 0.5);
        Pixel side = pixel(photo, place, 0.5 + MIDDLE / 2);
        int half_px = (int) Math.hypot(side.x() - middle.x(), side.y() - middle.y());
        int kept_px = Math.max(0, (int) (half_px / Math.sqrt(2)));
        return new Seen(patch, ColourReading.of(upright, inside(upright, middle), kept_px, light));
    }

    private static Pixel pixel(MeasuredPhoto photo, Rectangle place, double share) {
        return photo.fitted()
                .view()
                .pixel(
                        photo.print()
                                .printed(afterlength.craft.geometry.Point.of(
                                        place.left_mm() + share * place.width_mm(),
                                        place.top_mm() + share * place.height_mm())),
                        0);
    }

    private static Pixel inside(BufferedImage upright, Pixel pixel) {
        return new Pixel(
                Math.max(0, Math.min(upright.getWidth() - 1, pixel.x())),
                Math.max(0, Math.min(upright.getHeight() - 1, pixel.y())));
    }

    /** The class of every colour read here, with its usual error. */
    String words() {
        double error = patches.isEmpty()
                ? ColourClass.UNCALIBRATED.typical()
                : patches.get(0).reading().usualError_dE00();
        return "Colours read in this picture are of the class “" + ColourClass.UNCALIBRATED.words()
                + "”: usually off by "
                + Figures.fixed(error, 1) + " in ΔE00. The difference of two places in it is usually off by only "
                + Figures.fixed(difference(), 1) + ".";
    }

    private double difference() {
        ColourClass within = ColourClass.ONE_PHOTOGRAPH;
        return light.isWarm() ? within.underLamp().orElse(within.typical()) : within.typical();
    }
}
