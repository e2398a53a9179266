package afterlength.sight.colour;

import afterlength.craft.colour.Srgb;
import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.measure.MeasuredPhoto;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The light on the card, from its bare paper: how warm, how even, whether burnt out. The paper is
 * taken as white; what its brightener adds is left out, and so is what lies outside the card.
 *
 * @param redToBlue of the paper; 1 where the camera balanced it to white
 * @param unevenness largest over smallest brightness of the paper, less 1
 * @param clipped whether some of the paper stands at the end of the scale
 */
public record PaperLight(double redToBlue, double unevenness, boolean clipped) {
    /** Paper under a lamp of some 4500 K shows this much in a picture balanced for daylight; an assumption of ours. */
    private static final double WARM = 1.25;

    /** 5 % between card and place are 0.55 to 1.2 in ΔE00 (docs/sources.md#colour-study). */
    private static final double UNEVEN = 0.05;

    private static final int FULL = 254;
    private static final int HALF_SPOT_PX = 3;

    /** Reads it in the photograph that was measured. */
    public static PaperLight of(BufferedImage upright, MeasuredPhoto photo) {
        List<Spot> spots = barePlaces(photo.card()).stream()
                .map(photo.print()::printed)
                .map(place -> photo.fitted().view().pixel(place, 0))
                .map(pixel -> spot(upright, pixel))
                .toList();
        double red = spots.stream().mapToDouble(Spot::red).sum();
        double blue = spots.stream().mapToDouble(Spot::blue).sum();
        double brightest = spots.stream().mapToDouble(Spot::green).max().orElse(1);
        double darkest = spots.stream().mapToDouble(Spot::green).min().orElse(1);
        return new PaperLight(
                red / blue, brightest / darkest - 1, spots.stream().anyMatch(Spot::full));
    }

    public boolean isWarm() {
        return redToBlue > WARM;
    }

    /** What to know before a colour is read from this picture. */
    public List<String> caveats() {
        List<String> caveats = new ArrayList<>();
        if (isWarm()) {
            caveats.add("The light was warm: colours read in it are far less certain. Take the picture in daylight.");
        }
        if (unevenness > UNEVEN) {
            caveats.add(String.format(
                    Locale.ROOT,
                    "The light differs by %.0f %% over the card; from 5 %% on it shifts colours. Turn towards the window or step"
                            + " out of the shadow.",
                    unevenness * 100));
        }
        if (clipped) {
            caveats.add(
                    "Part of the card is burnt out to full white; colours there are lost. Expose less, avoid gloss.");
        }
        return caveats;
    }

    /** Along the free edge of the card, where nothing is printed. */
    private static List<Point> barePlaces(Card card) {
        List<Point> places = new ArrayList<>();
        double x_mm = card.isBody() ? 26 : 54.5;
        double last_mm = card.isBody() ? 210 : 70;
        for (double y_mm = 10; y_mm <= last_mm; y_mm += 20) {
            places.add(Point.of(x_mm, y_mm));
        }
        return places;
    }

    private record Spot(double red, double green, double blue, boolean full) {}

    private static Spot spot(BufferedImage upright, Pixel at) {
        double[] sum = new double[3];
        int count = 0;
        boolean full = false;
        for (int y = (int) at.y() - HALF_SPOT_PX; y <= at.y() + HALF_SPOT_PX; y++) {
            for (int x = (int) at.x() - HALF_SPOT_PX; x <= at.x() + HALF_SPOT_PX; x++) {
                int column = Math.max(0, Math.min(upright.getWidth() - 1, x));
                int row = Math.max(0, Math.min(upright.getHeight() - 1, y));
                int rgb = upright.getRGB(column, row);
                for (int n = 0; n < 3; n++) {
                    int value = rgb >> (16 - 8 * n) & 0xFF;
                    sum[n] += Srgb.linear(value / 255.0);
                    full |= value >= FULL;
                }
                count++;
            }
        }
        return new Spot(sum[0] / count, sum[1] / count, sum[2] / count, full);
    }
}
