package afterlength.start.verbs;

import afterlength.craft.colour.Lab;
import afterlength.craft.colour.SmoothSpectrum;
import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Wavelengths;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Colours as documents write them: L*a*b*, or a reflectance over wavelengths. */
final class ColourDocument {
    private static final Range LIGHTNESS = Range.between(0, 110, "");
    private static final Range OPPONENT = Range.between(-200, 200, "");
    private static final int FEWEST = 3;
    private static final int MOST = 81;

    private ColourDocument() {}

    /** Three numbers; what is wrong with them is noted, and a stand-in given. */
    static Lab lab(DocumentValue value) {
        List<DocumentValue> three = value.asList(3, 3);
        return three.isEmpty()
                ? new Lab(50, 0, 0)
                : new Lab(
                        three.get(0).asNumber(LIGHTNESS),
                        three.get(1).asNumber(OPPONENT),
                        three.get(2).asNumber(OPPONENT));
    }

    /** The values of a spectrum; empty when one of them is no number. */
    static Optional<double[]> findValues(DocumentValue list, Range range) {
        double[] values = list.asList(FEWEST, MOST).stream()
                .mapToDouble(value -> value.asNumber(range))
                .toArray();
        boolean whole = values.length > 0 && Arrays.stream(values).allMatch(Double::isFinite);
        return whole ? Optional.of(values) : Optional.empty();
    }

    /** Wavelengths from where, how far apart and how many; what cannot be is noted at this object. */
    static Optional<Wavelengths> findWavelengths(DocumentReader at, int count) {
        double start_nm = at.get("start_nm").asNumber(Range.between(380, 780, "nm"));
        double step_nm = at.get("step_nm").asNumber(Range.between(5, 20, "nm"));
        if (!Double.isFinite(start_nm) || !Double.isFinite(step_nm) || count < FEWEST) {
            return Optional.empty();
        }
        boolean onTable = start_nm % 5 == 0 && step_nm % 5 == 0 && start_nm + (count - 1) * step_nm <= 780;
        if (!onTable) {
            at.refuse(
                    "",
                    null,
                    "A spectrum begins on a multiple of 5 nm, goes on by 5, 10, 15 or 20 nm and ends by 780 nm; this one has "
                            + count + " values.");
            return Optional.empty();
        }
        return Optional.of(new Wavelengths((int) start_nm, (int) step_nm, count));
    }

    /** The smooth reflectance of a colour; noted when no surface has it. */
    static Optional<Spectrum> findSmooth(DocumentReader at, Lab colour, Wavelengths wavelengths) {
        if (!Double.isFinite(colour.lightness() + colour.a() + colour.b())) {
            return Optional.empty();
        }
        Optional<Spectrum> smooth = SmoothSpectrum.find(colour, wavelengths);
        if (smooth.isEmpty()) {
            at.refuse(
                    "/lab", null, "No surface in daylight has this colour; give the L*, a* and b* that were measured.");
        }
        return smooth;
    }
}
