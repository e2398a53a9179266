package afterlength.workshop.climate;

import afterlength.craft.wood.Band;
import afterlength.craft.wood.CrackClosing;
import afterlength.craft.wood.PlateResponse;
import afterlength.craft.wood.WidthChange;
import afterlength.craft.wood.WoodCaveat;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;

/** What a plate does when its air changes, and how that is said. */
record WoodAnswer(
        double from_pct,
        double to_pct,
        double uncertainty_pct,
        WidthChange free,
        CrackClosing crack,
        PlateResponse response) {

    String answer() {
        String band = "by " + mm(crack.plate().movement_mm());
        if (crack instanceof CrackClosing.Closes) {
            return "Yes, by this reckoning the edges meet: they come together " + band + ".";
        } else if (crack instanceof CrackClosing.MayClose) {
            return "Perhaps: the edges come together " + band
                    + ", and nobody knows how much of that reaches the crack.";
        } else if (crack instanceof CrackClosing.StaysOpen) {
            return "No: the edges come together " + band + " at most, and a gap is left.";
        }
        return "No: the wood dries and the crack becomes wider " + band + ".";
    }

    /** Said beside every yes: closed is not mended. */
    String closedIsNotMended() {
        return crack instanceof CrackClosing.Widens
                ? "Find out how dry the piece has been before, and let the room come back slowly."
                : "What the air closes, the air opens again. A crack that has met is not glued, and pressing damp into wood to close it "
                        + "warps plates and lifts varnish.";
    }

    String moisture() {
        return "Wood settles at " + Figures.plusMinus(from_pct, uncertainty_pct, "%") + " moisture before and "
                + Figures.plusMinus(to_pct, uncertainty_pct, "%") + " after.";
    }

    String width() {
        return "A free plate would become " + (free.typical().mm() < 0 ? "narrower" : "wider") + " by "
                + mm(new Band(
                        Math.min(Math.abs(free.low().mm()), Math.abs(free.high().mm())),
                        Math.max(Math.abs(free.low().mm()), Math.abs(free.high().mm()))))
                + ".";
    }

    String stress() {
        return crack.plate()
                .stress_MPa()
                .map(band -> "Held at its edges and unable to move at all it would be "
                        + (crack.plate().closing() ? "pressed" : "pulled") + " with " + Figures.fixed(band.low(), 1)
                        + " to "
                        + Figures.fixed(band.high(), 1)
                        + " MPa across the grain; spruce breaks across the grain at about 2.4 MPa.")
                .orElse("The stress in a held plate is known for quartered Sitka spruce only, so none is told here.");
    }

    String time() {
        return "With one face open the plate has made half of the change after " + Figures.fixed(response.half_h(), 1)
                + " h and nine tenths after " + Figures.fixed(response.nineTenths_h(), 0) + " h, at the quickest.";
    }

    List<String> caveats() {
        List<String> texts = new ArrayList<>();
        texts.addAll(crack.plate().caveats().stream().map(WoodCaveat::text).toList());
        WoodCaveat.OF_THE_CURVE.forEach(caveat -> texts.add(caveat.text()));
        texts.add(new WoodCaveat.ShortestTime().text());
        return texts;
    }

    private static String mm(Band band) {
        String low = Figures.fixed(band.low(), 2);
        String high = Figures.fixed(band.high(), 2);
        return low.equals(high) ? low + " mm" : low + " to " + high + " mm";
    }
}
