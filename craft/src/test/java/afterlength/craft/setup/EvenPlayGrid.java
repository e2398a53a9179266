package afterlength.craft.setup;

import java.util.List;

/** Tries every pair of inner clearances of four strings on a grid, then on finer grids about the best. */
public final class EvenPlayGrid {
    private static final int GRID = 12;

    private final BridgeInputs inputs;
    private final BowMapAxes axes;
    private final StringLayout layout;
    private double best_deg = Double.NEGATIVE_INFINITY;
    private double bestD_mm;
    private double bestA_mm;

    public EvenPlayGrid(BridgeInputs inputs, BowMapAxes axes) {
        this.inputs = inputs;
        this.axes = axes;
        layout = new StringLayout(inputs);
    }

    public double search_deg() {
        double low_mm = inputs.boardEndClearance_mm().smaller_mm();
        double width_mm = inputs.boardEndClearance_mm().larger_mm() - low_mm;
        look(low_mm, low_mm, width_mm, low_mm, low_mm + width_mm);
        for (int finer = 0; finer < 8; finer++) {
            double part_mm = width_mm * Math.pow(0.4, finer + 1);
            look(bestD_mm - part_mm / 2, bestA_mm - part_mm / 2, part_mm, low_mm, low_mm + width_mm);
        }
        return best_deg;
    }

    private void look(double d_mm, double a_mm, double width_mm, double low_mm, double high_mm) {
        for (int i = 0; i <= GRID; i++) {
            for (int j = 0; j <= GRID; j++) {
                tryOut(
                        Math.min(high_mm, Math.max(low_mm, d_mm + width_mm * i / GRID)),
                        Math.min(high_mm, Math.max(low_mm, a_mm + width_mm * j / GRID)));
            }
        }
    }

    private void tryOut(double d_mm, double a_mm) {
        List<CrossPoint> points = List.of(layout.bassWood(), wood(1, d_mm), wood(2, a_mm), layout.trebleWood());
        BridgeShape shape = Bench.shape(inputs.withCrown(new TemplateCrown(points)));
        double opening_deg = opening_deg(shape);
        if (opening_deg > best_deg) {
            best_deg = opening_deg;
            bestD_mm = d_mm;
            bestA_mm = a_mm;
        }
    }

    private CrossPoint wood(int string, double clearance_mm) {
        return new CrossPoint(
                layout.bridgeY_mm(string), layout.bridgeUnderside_mm(string, clearance_mm) + layout.groove_mm(string));
    }

    private double opening_deg(BridgeShape shape) {
        return ((BowMap) BowMap.of(shape, axes)).findTightest().orElseThrow().opening_deg();
    }
}
