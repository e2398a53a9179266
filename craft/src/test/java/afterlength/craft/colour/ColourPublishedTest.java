package afterlength.craft.colour;

import static afterlength.craft.colour.ColourTable.lab;
import static afterlength.craft.colour.ColourTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class ColourPublishedTest {
    private static final Wavelengths WHOLE = new Wavelengths(380, 5, 81);

    /** 58 colours from a general colour library, printed to eight decimals. */
    @Test
    void screenColoursBecomeXyzAndLab() throws IOException {
        for (NamedCsvRecord row : ColourTable.rows("ref_srgb_xyz_lab.csv")) {
            Srgb colour = Srgb.ofBytes(
                    Integer.parseInt(row.getField("R")),
                    Integer.parseInt(row.getField("G")),
                    Integer.parseInt(row.getField("B")));
            Xyz xyz = colour.toXyz();
            assertThat(xyz.x()).as(row.toString()).isCloseTo(number(row, "X_culori"), within(1e-8));
            assertThat(xyz.y()).as(row.toString()).isCloseTo(number(row, "Y_culori"), within(1e-8));
            assertThat(xyz.z()).as(row.toString()).isCloseTo(number(row, "Z_culori"), within(1e-8));
            Lab expected = lab(row, "L_culori", "a_culori", "b_culori");
            assertThat(colour.toLab().lightness()).as(row.toString()).isCloseTo(expected.lightness(), within(1e-6));
            assertThat(colour.toLab().a()).as(row.toString()).isCloseTo(expected.a(), within(1e-6));
            assertThat(colour.toLab().b()).as(row.toString()).isCloseTo(expected.b(), within(1e-6));
        }
    }

    /** Published chromaticities of the lights, CIE 015, five decimals; the sums go in steps of 5 nm. */
    @Test
    void whitesHaveTheirPublishedPlace() {
        assertWhite(Light.D65, 0.31271, 0.32902, 5e-5);
        assertWhite(Light.A, 0.44758, 0.40745, 5e-5);
        assertWhite(Light.LED_B1, 0.4560, 0.4078, 1e-4);
    }

    private static void assertWhite(Light light, double x, double y, double tolerance) {
        Xyz white = Viewing.under(light, WHOLE).white();
        assertThat(white.chromaticityX()).as(light.name()).isCloseTo(x, within(tolerance));
        assertThat(white.chromaticityY()).as(light.name()).isCloseTo(y, within(tolerance));
        assertThat(white.y()).isCloseTo(1, within(1e-12));
    }

    /** The whites of D65 and A from the 5 nm table, as another program sums them. */
    @Test
    void whitesAsAnotherProgramSumsThem() {
        assertThat(Viewing.under(Light.D65, WHOLE).white().x()).isCloseTo(0.95043, within(2e-5));
        assertThat(Viewing.under(Light.D65, WHOLE).white().z()).isCloseTo(1.08880, within(2e-5));
        assertThat(Viewing.under(Light.A, WHOLE).white().x()).isCloseTo(1.09849, within(2e-5));
        assertThat(Viewing.under(Light.A, WHOLE).white().z()).isCloseTo(0.35582, within(2e-5));
    }

    /** Light A is the radiation of a black body by Planck's formula with the constants of 1931 (memory), scaled to 100 at 560 nm. */
    @Test
    void lightAIsTheOneOfItsFormula() {
        for (int at_nm = 380; at_nm <= 780; at_nm += 5) {
            double expected = 100
                    * Math.pow(560.0 / at_nm, 5)
                    * Math.expm1(1.435e7 / (2848 * 560.0))
                    / Math.expm1(1.435e7 / (2848.0 * at_nm));
            assertThat(CieTable.light(Light.A, at_nm)).as(at_nm + " nm").isCloseTo(expected, within(1e-5 * expected));
        }
    }

    /** The weights every 10 nm from 400 to 700 nm that came with the invented palette, printed to ten decimals. */
    @Test
    void weightsEveryTenNanometres() throws IOException {
        Wavelengths visible = SyntheticPalette.WAVELENGTHS;
        for (Light light : new Light[] {Light.D65, Light.A}) {
            Viewing viewing = Viewing.under(light, visible);
            for (int which = 0; which < 3; which++) {
                Spectrum printed = SyntheticPalette.row("weight_" + light.name(), "XYZ".substring(which, which + 1));
                for (int i = 0; i < visible.count(); i++) {
                    assertThat(viewing.weight(which, i)).isCloseTo(printed.at(i), within(1e-9));
                }
            }
        }
    }
}
