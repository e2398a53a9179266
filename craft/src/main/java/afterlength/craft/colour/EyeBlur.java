package afterlength.craft.colour;

/**
 * A picture as the eye resolves it from a distance: the three opponent signals of Poirson and Wandell, each blurred by its own pair of
 * bell curves (widths at half height in degrees of sight), and brought back to light. The wide negative lobe for luminance is
 * left out, since it makes lines stand out more than they are. The curves end short of half a degree from their middle, as in their
 * authors' own program; the widest would reach further. For pictures whose pixel is narrower than the narrowest curve, which ten pixels to
 * the millimetre are from 60 mm on. Source: docs/sources.md#spatial-cielab.
 */
final class EyeBlur {
    private static final double[][] TO_OPPONENT = {
        {0.2787336, 0.7218031, -0.1065520}, {-0.4487736, 0.2898056, 0.0771569}, {0.0859513, -0.5899859, 0.5011089}
    };

    /** For light, red to green, and blue to yellow: width in degrees and weight of each bell. */
    private static final double[][][] BELLS = {
        {{0.05, 0.9207}, {0.225, 0.105}}, {{0.0685, 0.531}, {0.826, 0.33}}, {{0.092, 0.4877}, {0.6451, 0.3711}}
    };

    private static final double REACH_DEGREES = 0.5;

    /** Three widths from its middle a bell has fallen below 10⁻¹⁰. */
    private static final double REACH_IN_WIDTHS = 3;

    private final double pixelsPerDegree;

    private EyeBlur(double pixelsPerDegree) {
        this.pixelsPerDegree = pixelsPerDegree;
    }

    static LinearPicture seen(LinearPicture picture, double distance_mm) {
        return new EyeBlur(pixelsPerDegree(picture.pixelsPerMm(), distance_mm)).seen(picture);
    }

    static double pixelsPerDegree(double pixelsPerMm, double distance_mm) {
        return pixelsPerMm * distance_mm * Math.tan(Math.toRadians(1));
    }

    private LinearPicture seen(LinearPicture picture) {
        double[][] signals = new double[3][];
        for (int signal = 0; signal < 3; signal++) {
            signals[signal] =
                    blurred(mixed(picture, TO_OPPONENT[signal]), picture.width(), picture.height(), BELLS[signal]);
        }
        LinearPicture opponent = new LinearPicture(picture.width(), picture.height(), picture.pixelsPerMm(), signals);
        double[][] planes = new double[3][];
        double[][] back = ThreeByThree.inverse(TO_OPPONENT);
        for (int plane = 0; plane < 3; plane++) {
            planes[plane] = mixed(opponent, back[plane]);
            for (int i = 0; i < planes[plane].length; i++) {
                planes[plane][i] = Math.max(0, planes[plane][i]);
            }
        }
        return new LinearPicture(picture.width(), picture.height(), picture.pixelsPerMm(), planes);
    }

    private static double[] mixed(LinearPicture picture, double[] row) {
        double[] first = picture.plane(0);
        double[] second = picture.plane(1);
        double[] third = picture.plane(2);
        double[] mixed = new double[first.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = row[0] * first[i] + row[1] * second[i] + row[2] * third[i];
        }
        return mixed;
    }

    /** Each bell is blurred along and across by itself: a sum of bells does not part into rows and columns, one bell does. */
    private double[] blurred(double[] signal, int width, int height, double[][] bells) {
        double weights = bells[0][1] + bells[1][1];
        double[] sum = new double[signal.length];
        for (double[] bell : bells) {
            double[] kernel = kernel(bell[0] * pixelsPerDegree);
            double[] along = along(signal, width, height, 1, kernel);
            double[] both = along(along, width, height, width, kernel);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += bell[1] / weights * both[i];
            }
        }
        return sum;
    }

    /** Half of a bell, from its middle outwards, that sums to one with its mirror image; no pixel of it lies half a degree away. */
    private double[] kernel(double width_px) {
        double reach_px = Math.min(REACH_DEGREES * pixelsPerDegree, REACH_IN_WIDTHS * width_px + 1);
        double[] kernel = new double[Math.max(1, (int) Math.ceil(reach_px))];
        double sum = 0;
        for (int i = 0; i < kernel.length; i++) {
            double widths = i / width_px;
            kernel[i] = Math.exp(-4 * Math.log(2) * widths * widths);
            sum += i == 0 ? kernel[0] : 2 * kernel[i];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= sum;
        }
        return kernel;
    }

    /** One pass in rows (stride 1) or columns (stride the width); beyond the rim the rim goes on. */
    private static double[] along(double[] signal, int width, int height, int stride, double[] kernel) {
        int length = stride == 1 ? width : height;
        int lines = signal.length / length;
        int jump = stride == 1 ? width : 1;
        double[] passed = new double[signal.length];
        for (int line = 0; line < lines; line++) {
            int start = line * jump;
            for (int at = 0; at < length; at++) {
                double sum = kernel[0] * signal[start + at * stride];
                for (int i = 1; i < kernel.length; i++) {
                    sum += kernel[i]
                            * (signal[start + Math.max(0, at - i) * stride]
                                    + signal[start + Math.min(length - 1, at + i) * stride]);
                }
                passed[start + at * stride] = sum;
            }
        }
        return passed;
    }
}
