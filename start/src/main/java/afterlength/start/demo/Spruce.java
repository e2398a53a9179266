package afterlength.start.demo;

import java.util.SplittableRandom;

/**
 * Bare spruce of a two-piece belly, joined on the centre line: year rings run along the instrument, narrow in the middle and
 * wider outwards, each ending in a dark line of late wood. Rings are kept as a table, averaged over the breadth of a pixel so
 * that they do not shimmer.
 */
final class Spruce implements Surface {
    private static final double TABLE_STEP_MM = 0.04;
    private static final double REACH_MM = 420;

    private final Noise noise;
    private final float[] lateWood;

    Spruce(long seed, double ringScale, double pixel_mm) {
        this.noise = new Noise(seed);
        this.lateWood = averaged(rings(new SplittableRandom(seed + 1), ringScale), pixel_mm);
    }

    @Override
    public void colourAt(double x_mm, double y_mm, Colour colour) {
        double side = x_mm < 0 ? 40 : 0;
        double across_mm = Math.abs(x_mm) + 0.55 * noise.at(y_mm / 70 + side, x_mm / 45) + 0.5;
        double late = lateAt(Math.min(across_mm / TABLE_STEP_MM, lateWood.length - 2));
        double fibre =
                noise.at(across_mm * 7, y_mm * 0.11 + side) * 0.035 + noise.at(across_mm * 2.1, y_mm * 0.4) * 0.02;
        double silk = Math.max(0, noise.at(x_mm * 0.9, y_mm * 2.6)) * 0.03;
        double tone = 1
                + fibre
                + silk
                + 0.06 * noise.at(x_mm / 35 + side, y_mm / 90)
                + 0.05 * noise.at(x_mm / 4 + side, y_mm / 160);
        colour.set(
                tone * (0.64 - 0.36 * late),
                tone * (0.45 - 0.315 * late),
                tone * (0.235 - 0.19 * late),
                1 - 0.3 * late);
    }

    private double lateAt(double place) {
        int before = (int) place;
        return lateWood[before] + (lateWood[before + 1] - lateWood[before]) * (place - before);
    }

    /** Share of late wood, 0 to 1: rises slowly through a ring, ends sharply. */
    private static float[] rings(SplittableRandom random, double scale) {
        float[] late = new float[(int) (REACH_MM / TABLE_STEP_MM)];
        int from = 0;
        while (from < late.length) {
            double place = (double) from / late.length;
            double width_mm = scale * (0.75 + 2.2 * place) * random.nextDouble(0.72, 1.32);
            double strength = random.nextDouble(0.55, 1);
            int count = Math.max(3, (int) (width_mm / TABLE_STEP_MM));
            for (int i = 0; i < count && from + i < late.length; i++) {
                double share = (double) i / count;
                late[from + i] = (float) (strength * Math.pow(share, 4.5) * (share > 0.94 ? (1 - share) / 0.06 : 1));
            }
            from += count;
        }
        return late;
    }

    private static float[] averaged(float[] values, double pixel_mm) {
        int half = (int) (pixel_mm / TABLE_STEP_MM / 2);
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        float[] average = new float[values.length];
        for (int i = 0; i < values.length; i++) {
            int low = Math.max(0, i - half);
            int high = Math.min(values.length - 1, i + half);
            average[i] = (float) ((sums[high + 1] - sums[low]) / (high + 1 - low));
        }
        return average;
    }
}
