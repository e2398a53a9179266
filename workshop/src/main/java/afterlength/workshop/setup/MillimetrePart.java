package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.HeightCause;
import afterlength.craft.setup.OneMillimetre;
import afterlength.workshop.desk.Figures;
import java.util.List;

/** What a millimetre elsewhere does to the clearances, and where to look when a height is off. */
record MillimetrePart(OneMillimetre effect) {
    /** One line: what changed, and the clearances it gives. */
    record Row(String what, String bass, String treble) {}

    static MillimetrePart of(BridgeShape shape) {
        return new MillimetrePart(OneMillimetre.of(shape));
    }

    List<Row> rows() {
        return List.of(
                row("The projection falls (the neck drops)", effect.projectionFalls()),
                row("The arch rises and takes the bridge with it", effect.archRises()),
                row("The nut is lowered", effect.nutLowered()));
    }

    private static Row row(String what, BassTreble change) {
        return new Row(what, signed(change.bass_mm()), signed(change.treble_mm()));
    }

    private static String signed(double value_mm) {
        String figure = Figures.mm(value_mm, 2);
        return value_mm > 0 ? "+" + figure : figure;
    }

    List<String> causes() {
        return HeightCause.listInOrderOfChecking().stream()
                .map(BridgeWords::words)
                .toList();
    }
}
