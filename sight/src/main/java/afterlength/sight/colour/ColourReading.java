package afterlength.sight.colour;

import afterlength.craft.colour.Lab;
import afterlength.craft.colour.Srgb;
import afterlength.craft.colour.Xyz;
import afterlength.sight.camera.Pixel;
import java.awt.image.BufferedImage;

/**
 * The colour of a small square of a photograph, its light averaged, and what that is worth. It is as the camera made it; the
 * difference of two readings of one picture is worth far more than either of them, see {@link ColourClass}.
 *
 * @param usualError_dE00 mean error of this class under this light
 */
public record ColourReading(Lab colour, ColourClass colourClass, double usualError_dE00) {
    /**
     * Reads a square of an odd number of pixels around one; what lies outside the picture is left out.
     *
     * @param light of the card in the same picture
     */
    public static ColourReading of(BufferedImage upright, Pixel middle, int halfSide_px, PaperLight light) {
        double[] sum = new double[3];
        int count = 0;
        for (int y = (int) middle.y() - halfSide_px; y <= (int) middle.y() + halfSide_px; y++) {
            for (int x = (int) middle.x() - halfSide_px; x <= (int) middle.x() + halfSide_px; x++) {
                if (x >= 0 && y >= 0 && x < upright.getWidth() && y < upright.getHeight()) {
                    add(sum, upright.getRGB(x, y));
                    count++;
                }
            }
        }
        if (count == 0) {
            throw new IllegalArgumentException("the place " + middle + " lies outside the picture");
        }
        Lab colour = Lab.of(new Xyz(sum[0] / count, sum[1] / count, sum[2] / count), Xyz.SRGB_WHITE);
        ColourClass uncalibrated = ColourClass.UNCALIBRATED;
        return new ColourReading(colour, uncalibrated, uncalibrated.usualError_dE00(light.isWarm()));
    }

    private static void add(double[] sum, int rgb) {
        Xyz one = Srgb.ofBytes(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF).toXyz();
        sum[0] += one.x();
        sum[1] += one.y();
        sum[2] += one.z();
    }
}
