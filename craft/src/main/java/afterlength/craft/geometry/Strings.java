package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.List;

/** Four strings from above, bass string first: from the peg over nut and bridge to the tailpiece. */
public final class Strings {
    public static final int COUNT = 4;

    /** Outer spacing at the tailpiece as a share of that on the bridge; common practice. */
    private static final double TAIL_SPACING = 0.84;

    private Strings() {}

    /** From nut to tailpiece, with the bend on the bridge. */
    public static List<Curve> of(InstrumentShape instrument) {
        List<Curve> strings = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            Point nut = Point.of(
                    across(i, instrument.fittings().nutSpacing_mm()),
                    -instrument.fittings().neck_mm());
            Point bridge = onBridge(instrument, i);
            double tailSpacing_mm = instrument.fittings().bridgeSpacing_mm() * TAIL_SPACING;
            Point tail = Point.of(across(i, tailSpacing_mm), Tailpiece.fret_mm(instrument));
            strings.add(Curve.line(nut, bridge).then(Curve.line(bridge, tail)));
        }
        return strings;
    }

    /** From the nut to the peg: the outer strings to the pegs nearest the nut. */
    public static List<Curve> inPegbox(InstrumentShape instrument) {
        List<Double> levels_mm = Pegs.levels_mm(instrument);
        int[] pegs = {0, 2, 3, 1};
        List<Curve> strings = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            Point nut = Point.of(
                    across(i, instrument.fittings().nutSpacing_mm()),
                    -instrument.fittings().neck_mm());
            double x_mm = nut.x_mm() * (i == 0 || i == 3 ? 0.5 : 0.62);
            strings.add(Curve.line(nut, Point.of(x_mm, levels_mm.get(pegs[i]))));
        }
        return strings;
    }

    public static Point onBridge(InstrumentShape instrument, int string) {
        return Point.of(
                across(string, instrument.fittings().bridgeSpacing_mm()),
                instrument.body().stop_mm());
    }

    private static double across(int string, double spacing_mm) {
        return spacing_mm * ((double) string / (COUNT - 1) - 0.5);
    }
}
