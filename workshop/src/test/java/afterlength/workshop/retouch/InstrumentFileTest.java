package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Files as instruments write them, with what people do to them in a spreadsheet. All values are invented. */
class InstrumentFileTest {
    private static String heading(String parting) {
        return IntStream.rangeClosed(0, 35)
                .mapToObj(n -> Integer.toString(380 + 10 * n))
                .collect(Collectors.joining(parting));
    }

    private static String values(String parting, String value) {
        return IntStream.rangeClosed(0, 35).mapToObj(n -> value).collect(Collectors.joining(parting));
    }

    @Test
    void aLineIsASampleUnderAHeadingOfWavelengths() {
        InstrumentFile file = InstrumentFile.read(
                "Instrument of the shop\nname," + heading(",") + "\nwhite card," + values(",", "0.88") + "\nbad,"
                        + values(",", "0.1").replaceFirst("0.1", "x") + "\nover," + values(",", "1.2") + "\n");
        assertThat(file.understood())
                .isEqualTo(
                        "One sample a line, 36 wavelengths from 380 to 730 nm, as parts of one. Kept at 400 to 700 nm"
                                + " by 10.");
        assertThat(file.readings()).extracting(InstrumentReading::name).containsExactly("white card");
        assertThat(file.readings().get(0).spectrum().values()).hasSize(31).containsOnly(0.88);
        assertThat(file.rejected()).extracting(RejectedLine::where).containsExactly("line 1", "line 4", "line 5");
        assertThat(file.rejected())
                .extracting(RejectedLine::reason)
                .containsExactly(
                        "stands before the heading with the wavelengths",
                        "at 380 nm “x” stands, which is not a number",
                        "at 400 nm it has 1.2; a reflectance lies between 0 and 1, both left out");
    }

    @Test
    void decimalCommasAndPerCentAreRead() {
        InstrumentFile file =
                InstrumentFile.read("R" + heading(";R") + "\n" + values(";", "12,5") + "\n" + values(";", "90,1"));
        assertThat(file.understood())
                .isEqualTo(
                        "One sample a line, 36 wavelengths from 380 to 730 nm, in per cent. Kept at 400 to 700 nm by 10.");
        assertThat(file.readings()).extracting(InstrumentReading::name).containsExactly("line 2", "line 3");
        assertThat(file.readings().get(0).spectrum().at(0)).isCloseTo(0.125, within(1e-15));
        assertThat(file.rejected()).isEmpty();
    }

    @Test
    void wavelengthsMayRunDownTheFirstColumnAndCoarserFilesAreDrawnStraight() {
        String rows = IntStream.rangeClosed(0, 16)
                .mapToObj(n -> (390 + 20 * n) + "\t" + (0.1 + 0.02 * n) + "\t0,4\n")
                .collect(Collectors.joining());
        InstrumentFile file = InstrumentFile.read("nm\tamber\tblack\n" + rows + "end\n");
        assertThat(file.understood())
                .isEqualTo(
                        "One sample a column, 17 wavelengths from 390 to 710 nm, as parts of one. Kept at 400 to 700 nm"
                                + " by 10.");
        assertThat(file.readings()).extracting(InstrumentReading::name).containsExactly("amber", "black");
        double[] amber = file.readings().get(0).spectrum().values();
        assertThat(amber[0]).isCloseTo(0.11, within(1e-12));
        assertThat(amber[1]).isCloseTo(0.12, within(1e-12));
        assertThat(amber[30]).isCloseTo(0.41, within(1e-12));
        assertThat(file.rejected())
                .containsExactly(new RejectedLine("line 19", "end", "does not begin with a wavelength"));
    }

    @Test
    void aFileThatTellsTooLittleIsNotGuessedAt() {
        InstrumentFile shortFile =
                InstrumentFile.read("420,440,460,480,500,520,540,560,580\n.1,.1,.1,.1,.1,.1,.1,.1,.1");
        assertThat(shortFile.readings()).isEmpty();
        assertThat(shortFile.understood())
                .isEqualTo(
                        "One sample a line, 9 wavelengths from 420 to 580 nm. That is too little: 400 to 700 nm in steps"
                                + " of 20 nm or less are needed.");
        InstrumentFile words = InstrumentFile.read("L,a,b\n40,10,30");
        assertThat(words.understood())
                .isEqualTo(
                        "No wavelengths were found, neither in a heading nor down the first column, so nothing was read.");
        assertThat(words.rejected()).hasSize(2);
    }
}
