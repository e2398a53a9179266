package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Lettering;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sizes for one bridge drawing. On paper letters have the size a bench can read and shrink only where strings lie close; on
 * the screen, where the whole drawing is fitted to the page, letters and lines grow with the bridge.
 *
 * @param figure_mm size of heights over the strings
 * @param small_mm size of everything else
 * @param line_mm breadth of a plain line; the crown is heavier
 */
record BridgeLook(double figure_mm, double small_mm, double line_mm) {
    /** Part of the room between two strings that a label may fill. */
    private static final double FILLED = 0.86;

    static BridgeLook forPaper(BridgeShape shape) {
        double figure_mm = Math.min(3.4, widestFigure_mm(shape));
        return new BridgeLook(figure_mm, Math.min(2.6, figure_mm), 0.15);
    }

    static BridgeLook forScreen(BridgeShape shape) {
        double figure_mm = widestFigure_mm(shape);
        return new BridgeLook(figure_mm, figure_mm * 0.76, figure_mm * 0.038);
    }

    /** How far the lines under the strings run on below the belly. */
    double belowBelly_mm() {
        return 0.5 * small_mm;
    }

    /** How far the belly line runs on beside the bridge. */
    double beside_mm() {
        return 5 * small_mm;
    }

    /** The largest size at which the labels of two neighbours do not touch. */
    private static double widestFigure_mm(BridgeShape shape) {
        List<SeatedString> strings = shape.strings();
        double room_mm = IntStream.range(1, strings.size())
                .mapToDouble(i -> strings.get(i).bridgeY().mm()
                        - strings.get(i - 1).bridgeY().mm())
                .min()
                .orElseThrow();
        double widest = strings.stream()
                .mapToDouble(string -> Math.max(
                        Lettering.width_mm(Face.SANS_STRONG, Figures.tenths(string.woodHeight()), 1),
                        Lettering.width_mm(Face.SERIF_ITALIC, string.name(), 1)))
                .max()
                .orElseThrow();
        return Math.max(1.4, Math.min(FILLED * room_mm / widest, 0.31 * room_mm));
    }
}
