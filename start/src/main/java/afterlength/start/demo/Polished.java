package afterlength.start.demo;

import java.awt.Shape;

/** A turned or carved piece of dark, polished wood: pegs, tailpiece, button, saddle, nut. */
final class Polished {
    private Polished() {}

    /** Rounded over the given breadth at its edges, flat inside. */
    static void paint(Canvas canvas, Shape shape, FittingWood wood, double round_mm, Noise noise) {
        double cell_mm = Math.max(round_mm / 7, canvas.pixel_mm() / 2);
        Relief relief = new Relief(shape, cell_mm, (x_mm, y_mm, d) -> rounded(d, round_mm), 3);
        Colour colour = new Colour();
        canvas.shade(shape, (x_mm, y_mm) -> {
            double streak = 1 + 0.25 * noise.at(x_mm * 2.2, y_mm * 0.16) + 0.1 * noise.at(x_mm / 9, y_mm / 14);
            wood.put(streak, colour);
            double slopeX = relief.slopeX(x_mm, y_mm);
            double slopeY = relief.slopeY(x_mm, y_mm);
            return colour.rgb(Light.diffuse(slopeX, slopeY), 0.30 * Light.gloss(slopeX, slopeY));
        });
    }

    static double rounded(double distance_mm, double round_mm) {
        double share = Math.min(distance_mm / round_mm, 1);
        return round_mm * 0.55 * Math.sqrt(1 - (1 - share) * (1 - share));
    }
}
