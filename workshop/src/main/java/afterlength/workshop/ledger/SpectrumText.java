package afterlength.workshop.ledger;

import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Wavelengths;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A spectrum in a column: first wavelength and step in nm, then the values to the last digit, {@code 400 10 0.31 0.32 …}. */
final class SpectrumText {
    private SpectrumText() {}

    static String write(Spectrum spectrum) {
        Wavelengths at = spectrum.wavelengths();
        return at.first_nm() + " " + at.step_nm() + " "
                + Arrays.stream(spectrum.values()).mapToObj(Double::toString).collect(Collectors.joining(" "));
    }

    static Spectrum read(String text) {
        List<String> words = List.of(text.split(" "));
        double[] values =
                words.stream().skip(2).mapToDouble(Double::parseDouble).toArray();
        Wavelengths at = new Wavelengths(Integer.parseInt(words.get(0)), Integer.parseInt(words.get(1)), values.length);
        return Spectrum.of(at, values);
    }
}
