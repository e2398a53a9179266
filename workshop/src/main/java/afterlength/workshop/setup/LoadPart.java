package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeLoad;
import afterlength.craft.setup.LoadRefused;
import afterlength.craft.setup.StringThrust;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.SvgPen;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the strings do to the bridge and its feet. */
record LoadPart(BenchTail tail) {
    /** Source: docs/sources.md#si-brochure. */
    private static final double STANDARD_GRAVITY = 9.80665;

    Optional<BridgeLoad> load() {
        return tail.findLoad()
                .flatMap(answer -> answer instanceof BridgeLoad load ? Optional.of(load) : Optional.empty());
    }

    List<Problem> problems() {
        return tail.findLoad()
                .map(answer -> answer instanceof LoadRefused refused ? refused.problems() : List.<Problem>of())
                .orElse(List.of());
    }

    String missing() {
        return String.join(
                ", ",
                tail.missingForLoad().stream()
                        .map(reading -> reading.label().toLowerCase(Locale.ROOT))
                        .toList());
    }

    static String sentence(BridgeLoad load) {
        double down_N = load.totalDownforce().newton();
        return "The strings pull with " + force(load.totalTension().newton()) + " and press the bridge down with "
                + force(down_N) + "; the treble foot carries "
                + Figures.fixed(100 * load.trebleFoot(), 0) + " % of it. Together they tip the bridge "
                + Figures.fixed(Math.abs(load.lean().deg()), 1) + "° to the "
                + (load.lean().deg() >= 0 ? "board" : "tailpiece") + " of square to the edges.";
    }

    private static String force(double newton) {
        return Figures.fixed(newton, 0) + " N (" + Figures.fixed(newton / STANDARD_GRAVITY, 1) + " kgf)";
    }

    static String newton(double newton) {
        return Figures.fixed(newton, 1) + " N";
    }

    static String angle(StringThrust thrust) {
        return Figures.fixed(thrust.stringAngle().deg(), 1) + "°";
    }

    static String treble(StringThrust thrust) {
        return Figures.fixed(100 * thrust.trebleFoot(), 0) + " %";
    }

    String drawing() {
        return load().map(load -> SvgPen.forScreen(LoadDrawing.of(tail, load))).orElse("");
    }
}
