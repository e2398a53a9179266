package afterlength.craft.colour;

import java.util.Arrays;
import java.util.List;

/**
 * How far a mended line stands out, from a photograph of it: the picture is blurred as the eye blurs it from a distance
 * ({@link EyeBlur}); then, piece by piece of 2 mm along the line, the mean colour of a strip on it is compared with the mean of both
 * flanks 0.8 to 2 mm away. The same is done on lines in the varnish that was not touched: what they show is the unrest of
 * the grain. Gloss and relief are not in it; they want a second photograph in raking light. Photographs of 10 pixels to the
 * millimetre or more. {@link LineSearch} reads it off a picture. Source: docs/sources.md#colour-study.
 *
 * @param high the 95th percentile of ΔE00 along the line
 * @param mean of ΔE00 along the line
 * @param control the highest 95th percentile of the untouched lines
 * @param shareAbove part of the length that stands out more than 1 and more than the untouched lines
 * @param beside how much less it reads a tenth of a millimetre beside the place where it reads most
 * @param across ΔE00 to the flanks, from {@link #FARTHEST_MM} on one side to as much on the other, every {@link #STEP_MM}
 */
public record LineVisibility(
        double high, double mean, double control, double shareAbove, double beside, List<Double> across) {
    /** From here on a thin line is plainly seen. Source: docs/sources.md#colour-study. */
    private static final double PLAIN = 1.8;

    /** Below this two large even fields are hardly told apart. */
    private static final double JUST_SEEN = 1;

    /** The fewest pixels to a millimetre. */
    public static final double COARSEST_PIXELS_PER_MM = 10;

    /** How far to either side the picture of the line across reaches. */
    public static final double FARTHEST_MM = 3;

    public static final double STEP_MM = 0.1;

    public LineVisibility {
        across = List.copyOf(across);
    }

    /** What a person would say. */
    public enum Word {
        NOT_FOUND("not found at this distance by who does not know it"),
        FOUND_BY_SEARCHING("found by who searches"),
        VISIBLE("visible");

        private final String words;

        Word(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static LineVisibility of(double[] differences, double control, double beside, List<Double> across) {
        double bar = Math.max(JUST_SEEN, control);
        long above = Arrays.stream(differences).filter(one -> one > bar).count();
        return new LineVisibility(
                percentile95(differences),
                Arrays.stream(differences).average().orElse(0),
                control,
                (double) above / differences.length,
                beside,
                across);
    }

    static double percentile95(double[] differences) {
        double[] sorted = differences.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(0.95 * (sorted.length - 1)))];
    }

    /** The unrest of the grain hides what stays below it. */
    public Word word() {
        return wordFor(high);
    }

    /** What would be said of the same line if it stood out so much. */
    public Word wordFor(double stands) {
        if (stands <= control) {
            return Word.NOT_FOUND;
        }
        return stands < PLAIN ? Word.FOUND_BY_SEARCHING : Word.VISIBLE;
    }
}
