package afterlength.craft.colour;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Twelve invented colorants and an invented sealed ground; no measurements. */
final class SyntheticPalette {
    static final Wavelengths WAVELENGTHS = new Wavelengths(400, 10, 31);

    private SyntheticPalette() {}

    static Spectrum ground() {
        return row("ground", "R");
    }

    static List<Colorant> colorants() {
        return rows().stream()
                .filter(row -> row.getField("kind").equals("K"))
                .map(row -> row.getField("name"))
                .map(name -> new Colorant(name, row(name, "K"), row(name, "S")))
                .toList();
    }

    static Spectrum row(String name, String kind) {
        return rows().stream()
                .filter(row -> row.getField("name").equals(name)
                        && row.getField("kind").equals(kind))
                .map(SyntheticPalette::spectrum)
                .findFirst()
                .orElseThrow();
    }

    private static List<NamedCsvRecord> rows() {
        try {
            return ColourTable.rows("recipe_palette_synthetic.csv");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Spectrum spectrum(NamedCsvRecord row) {
        double[] values = new double[WAVELENGTHS.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = ColourTable.number(row, Integer.toString(WAVELENGTHS.at_nm(i)));
        }
        return Spectrum.of(WAVELENGTHS, values);
    }
}
