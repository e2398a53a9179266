package afterlength.craft.colour;

import afterlength.craft.geometry.Point;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How far a mended line stands out, from a photograph of it: the picture is blurred as the eye blurs it from a distance
 * ({@link EyeBlur}); then, piece by piece of 2 mm along the line, the mean colour of a strip on it is compared with the mean of both
 * flanks 0.8 to 2 mm away. The same is done on lines beside it in the varnish that was not touched: what they show is the unrest of
 * the grain. Gloss and relief are not in it; they want a second photograph in raking light. Photographs of 10 pixels to the
 * millimetre or more. Source: docs/sources.md#colour-study.
 *
 * @param high the 95th percentile of ΔE00 along the line
 * @param mean of ΔE00 along the line
 * @param control the highest 95th percentile of the lines beside it
 * @param shareAbove part of the length that stands out more than 1 and more than the lines beside it
 */
public record LineVisibility(double high, double mean, double control, double shareAbove) {
    /** From here on a thin line is plainly seen. Source: docs/sources.md#colour-study. */
    private static final double PLAIN = 1.8;

    /** Below this two large even fields are hardly told apart. */
    private static final double JUST_SEEN = 1;

    /** The fewest pixels to a millimetre. */
    public static final double COARSEST_PIXELS_PER_MM = 10;

    /** How far the lines beside it lie. Source: docs/sources.md#colour-study. */
    private static final double[] BESIDE_MM = {-14, -11, -8, 8, 11, 14};

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

    /**
     * Reads a line off a picture.
     *
     * @param line at least two places in millimetres, inside the picture
     * @param distance_mm from the eye, usually 400
     * @throws IllegalArgumentException when the picture is too coarse, or too small for any line beside this one
     */
    public static LineVisibility of(LinearPicture picture, List<Point> line, double distance_mm) {
        if (picture.pixelsPerMm() < COARSEST_PIXELS_PER_MM) {
            throw new IllegalArgumentException("the picture has " + picture.pixelsPerMm()
                    + " pixels to the millimetre; 10 or more are needed to see a line");
        }
        LinePieces pieces = new LinePieces(EyeBlur.seen(picture, distance_mm));
        double[] differences = pieces.differences(line);
        double control = control(pieces, line);
        double bar = Math.max(JUST_SEEN, control);
        long above = Arrays.stream(differences).filter(one -> one > bar).count();
        return new LineVisibility(
                percentile95(differences),
                Arrays.stream(differences).average().orElse(0),
                control,
                (double) above / differences.length);
    }

    private static double control(LinePieces pieces, List<Point> line) {
        double highest = Double.NaN;
        for (double shift_mm : BESIDE_MM) {
            Optional<List<Point>> moved = pieces.findBeside(line, shift_mm);
            if (moved.isPresent()) {
                double high = percentile95(pieces.differences(moved.get()));
                highest = Double.isNaN(highest) ? high : Math.max(highest, high);
            }
        }
        if (Double.isNaN(highest)) {
            throw new IllegalArgumentException(
                    "the picture shows no varnish 8 to 14 mm beside the line to compare with");
        }
        return highest;
    }

    private static double percentile95(double[] differences) {
        double[] sorted = differences.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(0.95 * (sorted.length - 1)))];
    }

    /** The unrest of the grain hides what stays below it. */
    public Word word() {
        if (high <= control) {
            return Word.NOT_FOUND;
        }
        return high < PLAIN ? Word.FOUND_BY_SEARCHING : Word.VISIBLE;
    }
}
