package afterlength.workshop.retouch;

import afterlength.craft.colour.LineVisibility;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How far a line stands out in one photograph, as it was read and kept. All figures are ΔE00 as seen from 400 mm.
 *
 * @param markId the line as drawn on its photograph
 * @param plusMinus of high
 * @param control what untouched varnish reads in the same photograph
 * @param shareAbove part of the length that stands out, 0 to 1
 * @param across values from one side to the other, every tenth of a millimetre, with spaces between
 * @param untouched the lines compared with, as points of an SVG polyline in pixels of the photograph, one a row
 * @param caveats one a row
 */
public record LineSight(
        long markId,
        double high,
        double plusMinus,
        double mean,
        double control,
        double shareAbove,
        double pixelsPerMm,
        String across,
        String untouched,
        String caveats) {

    static LineSight of(
            long markId,
            LineVisibility seen,
            double plusMinus,
            double pixelsPerMm,
            List<String> untouched,
            List<String> caveats) {
        return new LineSight(
                markId,
                seen.high(),
                plusMinus,
                seen.mean(),
                seen.control(),
                seen.shareAbove(),
                pixelsPerMm,
                seen.across().stream()
                        .map(one -> Double.toString(Math.round(one * 1000) / 1000.0))
                        .collect(Collectors.joining(" ")),
                String.join("\n", untouched),
                String.join("\n", caveats));
    }

    LineVisibility visibility() {
        return new LineVisibility(high, mean, control, shareAbove, 0, acrossValues());
    }

    List<Double> acrossValues() {
        return Arrays.stream(across.split(" ")).map(Double::valueOf).toList();
    }

    List<String> untouchedLines() {
        return untouched.lines().toList();
    }

    List<String> caveatLines() {
        return caveats.lines().toList();
    }
}
