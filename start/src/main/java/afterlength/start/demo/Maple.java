package afterlength.start.demo;

/**
 * Bare maple with flames: bright and dark stripes across the grain, waves of chance in breadth, strength and course, mirrored at
 * the joint; small dark pores along the grain.
 *
 * @param period_mm breadth of a bright and a dark stripe together
 * @param slope how much the stripes fall outwards
 */
record Maple(Noise noise, double period_mm, double slope, double strength) implements Surface {

    @Override
    public void colourAt(double x_mm, double y_mm, Colour colour) {
        double side = x_mm < 0 ? 60 : 0;
        double out_mm = Math.abs(x_mm);
        double bend = 2.6 * noise.at(out_mm / 26 + side, y_mm / 34) + 0.9 * noise.at(out_mm / 7 + side, y_mm / 9);
        double wave = Math.sin(2 * Math.PI * (y_mm + out_mm * slope + bend * period_mm / 6) / period_mm);
        double depth = strength * (0.62 + 0.5 * noise.at(out_mm / 30 + side, y_mm / 16));
        double flame = 1 + depth * (wave > 0 ? Math.sqrt(wave) * 0.22 : wave * 0.42);
        double fibre = 1 + 0.05 * noise.at(x_mm * 4.5, y_mm * 0.22) + 0.04 * noise.at(x_mm / 20, y_mm / 60);
        double pore = Math.max(0, noise.at(x_mm * 5 + 9, y_mm * 0.7) - 0.62) * 0.5;
        double tone = flame * fibre * (1 - pore);
        colour.set(0.60 * tone, 0.405 * tone * (0.97 + 0.03 * flame), 0.215 * tone, 0.8 + 0.4 * (flame - 1));
    }
}
