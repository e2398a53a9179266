package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Lab;
import afterlength.craft.colour.SmoothSpectrum;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads one colour: three values of L*a*b*, or the lines of an instrument's file with one sample in them. */
final class ColourForm {
    static final List<Choice> CLASSES = Arrays.stream(ColourClass.values())
            .map(one -> new Choice(one.name(), one.words()))
            .toList();

    private final Typed typed;
    private final String name;
    private final String label;

    private ColourForm(Typed typed, String name, String label) {
        this.typed = typed;
        this.name = name;
        this.label = label;
    }

    /**
     * The colour, or null when a problem was noted.
     *
     * @param label such as "The ground"
     */
    static @Nullable ColourReading read(Typed typed, String name, String label) {
        return new ColourForm(typed, name, label).read();
    }

    /** A colour of three values alone. */
    static @Nullable Spectrum readLab(Typed typed, String name, String label) {
        return new ColourForm(typed, name, label).ofLab();
    }

    private @Nullable ColourReading read() {
        ColourClass colourClass = typed.choice(name + "_class", "How " + small(label) + " is known", ColourClass.class);
        boolean pasted = !typed.raw(name + "_file").isBlank();
        if (pasted && colourClass != null && colourClass != ColourClass.INSTRUMENT) {
            typed.note(
                    name + "_class",
                    label + " is given as an instrument's lines and called “" + colourClass.words() + "”; choose “"
                            + ColourClass.INSTRUMENT.words() + "”, or take the lines out.");
        }
        Spectrum colour = pasted ? ofFile() : ofLab();
        return colour == null || colourClass == null ? null : new ColourReading(colourClass, pasted, colour);
    }

    private @Nullable Spectrum ofFile() {
        InstrumentFile file = InstrumentFile.read(typed.raw(name + "_file"));
        if (file.readings().size() == 1) {
            return file.readings().get(0).spectrum();
        }
        String rejected = file.rejected().isEmpty()
                ? ""
                : " The first line left out: " + firstRejected(file.rejected().get(0));
        typed.note(
                name + "_file",
                label + " needs the lines of one sample; "
                        + counted(file.readings().size()) + " found. " + file.understood() + rejected);
        return null;
    }

    private static String small(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private static String counted(int readings) {
        return readings == 0 ? "none was" : readings + " were";
    }

    private static String firstRejected(RejectedLine line) {
        return line.where() + ", " + line.reason() + ".";
    }

    private @Nullable Spectrum ofLab() {
        double lightness = typed.requiredDecimal(name + "_l", label + ", L*,", "", 0, 100);
        double a = typed.requiredDecimal(name + "_a", label + ", a*,", "", -128, 128);
        double b = typed.requiredDecimal(name + "_b", label + ", b*,", "", -128, 128);
        if (Double.isNaN(lightness + a + b)) {
            return null;
        }
        Optional<Spectrum> found = SmoothSpectrum.find(new Lab(lightness, a, b), PaletteGrid.WAVELENGTHS);
        if (found.isEmpty()) {
            typed.note(
                    name + "_l",
                    label + " is L* " + Figures.plain(lightness) + ", a* " + Figures.plain(a) + ", b* "
                            + Figures.plain(b)
                            + ", a colour that no surface can have. Check the three values, and that their white is D65.");
        }
        return found.orElse(null);
    }
}
