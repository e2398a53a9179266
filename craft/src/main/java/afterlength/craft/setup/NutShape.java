package afterlength.craft.setup;

import afterlength.craft.units.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The nut that goes with a bridge: the string lies on the floor of its groove, a part of its diameter deep (the groove fraction of
 * the bridge), so that before the grooves are cut the nut stands {@code clearance + g·d} over the board.
 */
public record NutShape(List<NutSeat> seats) {
    public NutShape {
        seats = List.copyOf(seats);
    }

    public static NutShape of(BridgeShape shape) {
        StringLayout layout = new StringLayout(shape.inputs());
        return new NutShape(IntStream.range(0, layout.count())
                .mapToObj(string -> seat(shape, layout, string))
                .toList());
    }

    private static NutSeat seat(BridgeShape shape, StringLayout layout, int string) {
        double clearance_mm = layout.nutClearance_mm(string);
        return new NutSeat(
                shape.strings().get(string).name(),
                Length.ofMm(layout.nutY_mm(string)),
                Length.ofMm(clearance_mm),
                Length.ofMm(layout.nutUnderside_mm(string)),
                Length.ofMm(clearance_mm + layout.groove_mm(string)));
    }
}
