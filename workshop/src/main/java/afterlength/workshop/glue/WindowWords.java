package afterlength.workshop.glue;

import afterlength.craft.glue.GluingCaveat;
import afterlength.craft.glue.GluingModel;
import afterlength.craft.glue.WindowSeconds;
import afterlength.craft.glue.WorkingWindow;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.OptionalDouble;

/** How a working window is told. */
final class WindowWords {
    private WindowWords() {}

    static String answer(WorkingWindow.Known window) {
        WindowSeconds seconds = window.seconds();
        if (seconds.typical_s().isEmpty()) {
            return "By this reckoning the wood does not make the film gel; the air has to.";
        }
        return "About " + seconds(seconds.typical_s()) + " until the film gels, " + band(seconds) + ".";
    }

    /** "between 3 and 15 s" or "at least 8 s". */
    static String band(WindowSeconds seconds) {
        return seconds.high_s().isEmpty()
                ? "at least " + seconds(seconds.low_s()) + ", with no upper end"
                : "between " + number(seconds.low_s()) + " and " + seconds(seconds.high_s());
    }

    static String model(WorkingWindow.Known window) {
        return window.model() == GluingModel.HALF_SPACE
                ? "Reckoned as a film on thick wood."
                : "Reckoned with film and plate together, since the plate is too thin to count as thick wood.";
    }

    static String seconds(OptionalDouble value) {
        return value.isEmpty() ? "more than ten minutes" : number(value) + " s";
    }

    /** Two figures are more than is known. */
    static String number(OptionalDouble value) {
        double s = value.orElse(0);
        return Figures.fixed(s, s < 10 ? 1 : 0);
    }

    static List<String> caveats(WorkingWindow.Known window) {
        return window.caveats().stream()
                .filter(caveat -> !(caveat instanceof GluingCaveat.Scalds))
                .map(GluingCaveat::text)
                .toList();
    }
}
