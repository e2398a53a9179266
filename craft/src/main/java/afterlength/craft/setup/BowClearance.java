package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Playing one string alone. The bow is a straight line lying on the strings in a plane square to the centre line; every string
 * there is a disc of its own diameter. The limits of a string are the common upper tangents with its neighbours, on the outer
 * sides the line through the edge of the waist; the clear angle is what lies between them. {@link BowContact} has the formulas,
 * {@link BowMap} many places at once.
 */
public final class BowClearance {
    private final BridgeShape shape;
    private final BowPlace place;
    private final BowContact contact;

    private BowClearance(BridgeShape shape, BowPlace place) {
        this.shape = shape;
        this.place = place;
        contact = new BowContact(shape.inputs(), StringRun.all(shape));
    }

    public static BowAnswer at(BridgeShape shape, BowPlace place) {
        List<Problem> problems = BowChecks.problems(shape, place);
        return problems.isEmpty() ? new BowClearance(shape, place).read() : new BowRefused(problems);
    }

    private BowReading read() {
        int count = shape.strings().size();
        List<BowedString> strings = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            boolean inner = i > 0 && i < count - 1;
            strings.add(BowedString.of(shape.strings().get(i).name(), inner, contact.limits(played(i))));
        }
        return new BowReading(
                place,
                strings,
                BowCaveats.list(shape.inputs(), !place.stoppedAt_mm().isEmpty(), place.distance_mm()));
    }

    private Played played(int string) {
        double speaking_mm = shape.inputs().speakingLength_mm();
        FittedString fitted = shape.inputs().strings().get(string);
        boolean isOpen = !place.stoppedAt_mm().containsKey(fitted.name());
        double stopped_mm = place.stoppedAt_mm().getOrDefault(fitted.name(), speaking_mm);
        double tension_N = shape.inputs().findTension_N(string).orElse(Double.NaN);
        return Played.of(string, place.distance_mm(), stopped_mm, isOpen, tension_N, place.force_N());
    }
}
