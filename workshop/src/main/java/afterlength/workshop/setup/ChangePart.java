package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.SvgPen;
import java.util.List;
import java.util.Optional;

/** The set-up as the instrument came and as it goes home, laid over each other; a difference is what it goes home with, less what it came with. */
record ChangePart(BridgeShape came, BridgeShape goes) {
    /** A string that both set-ups have, by its name. */
    record Row(String name, SeatedString came, SeatedString goes) {
        String woodCame() {
            return Figures.fixed(came.woodHeight().mm(), 1);
        }

        String woodGoes() {
            return Figures.fixed(goes.woodHeight().mm(), 1);
        }

        String wood() {
            return difference(came.woodHeight().mm(), goes.woodHeight().mm());
        }

        String clearance() {
            return difference(
                    came.boardEndClearance().mm(), goes.boardEndClearance().mm());
        }

        String aside() {
            return difference(came.bridgeY().mm(), goes.bridgeY().mm());
        }
    }

    static String difference(double came_mm, double goes_mm) {
        String figure = Figures.fixed(goes_mm - came_mm, 1);
        return figure.startsWith("−") || figure.equals("0.0") ? figure : "+" + figure;
    }

    List<Row> rows() {
        return goes.strings().stream().flatMap(string -> row(string).stream()).toList();
    }

    private Optional<Row> row(SeatedString string) {
        return came.strings().stream()
                .filter(old -> old.name().equals(string.name()))
                .findFirst()
                .map(old -> new Row(string.name(), old, string));
    }

    String centreCame() {
        return Figures.fixed(came.centreHeight().mm(), 1);
    }

    String centreGoes() {
        return Figures.fixed(goes.centreHeight().mm(), 1);
    }

    String centre() {
        return difference(came.centreHeight().mm(), goes.centreHeight().mm());
    }

    String sentence() {
        double higher_mm = goes.centreHeight().mm() - came.centreHeight().mm();
        double plusMinus_mm =
                Math.hypot(came.heightPlusMinus().mm(), goes.heightPlusMinus().mm());
        String how = Math.abs(higher_mm) < 0.05
                ? "as high on the centre line as it came"
                : Figures.mm(Math.abs(higher_mm), 1) + (higher_mm > 0 ? " higher" : " lower")
                        + " on the centre line than it came";
        return "The bridge goes home " + how + ", ± " + Figures.mm(plusMinus_mm, 1)
                + ", the readings of both days taken as independent.";
    }

    String drawing() {
        return SvgPen.forScreen(ChangeDrawing.of(came, goes));
    }
}
