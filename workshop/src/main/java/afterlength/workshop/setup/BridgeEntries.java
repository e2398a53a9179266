package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.Crown;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.Waist;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Entry;
import java.util.ArrayList;
import java.util.List;

/** What a bridge was drawn from, as a list of names and figures. */
final class BridgeEntries {
    private BridgeEntries() {}

    static List<Entry> of(BridgeInputs inputs) {
        List<Entry> entries = new ArrayList<>(List.of(
                new Entry("speaking length", mm(inputs.speakingLength_mm())),
                new Entry("board length", mm(inputs.board().length_mm())),
                new Entry("board radius", radius(inputs.board())),
                new Entry("projection", mm(inputs.projection_mm())),
                new Entry("spacing at the nut", spacing(inputs.nutSpacing().places_mm(inputs.strings()))),
                new Entry(
                        "spacing at the bridge", spacing(inputs.bridgeSpacing().places_mm(inputs.strings()))),
                new Entry("clearance at the nut", pair(inputs.nutClearance_mm())),
                new Entry("wanted at board end", pair(inputs.boardEndClearance_mm())),
                new Entry("clearance measured", words(inputs.clearanceConvention())),
                new Entry("crown", words(inputs.crown())),
                new Entry("groove", Figures.hundredths(inputs.grooveFraction()) + " of the string")));
        BassTreble scoop = inputs.board().scoop_mm();
        if (scoop != null) {
            entries.add(new Entry("scoop of the board", pair(scoop)));
        }
        Waist waist = inputs.waist();
        if (waist != null) {
            entries.add(new Entry("waist, edge below belly", waist(waist)));
        }
        return entries;
    }

    private static String waist(Waist waist) {
        return Figures.tenths(waist.width_mm()) + ", " + mm(waist.edgeDrop_mm());
    }

    private static String mm(double value_mm) {
        return Figures.tenths(value_mm) + " mm";
    }

    private static String radius(Board board) {
        boolean same = board.radiusAtNut_mm() == board.radius_mm();
        return (same ? "" : Figures.tenths(board.radiusAtNut_mm()) + " to ") + mm(board.radius_mm());
    }

    private static String spacing(double[] places_mm) {
        return mm(places_mm[places_mm.length - 1] - places_mm[0]);
    }

    private static String pair(BassTreble pair) {
        return Figures.hundredths(pair.bass_mm()) + " / " + Figures.hundredths(pair.treble_mm()) + " mm";
    }

    private static String words(ClearanceConvention convention) {
        return convention == ClearanceConvention.SQUARE ? "square to board" : "upright";
    }

    private static String words(Crown crown) {
        if (crown instanceof RadiusCrown arc) {
            return "radius " + mm(arc.radius_mm());
        }
        return crown instanceof EvenPlayCrown ? "even play" : "maker’s template";
    }
}
