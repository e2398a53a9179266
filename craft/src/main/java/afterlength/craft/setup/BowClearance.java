package afterlength.craft.setup;

import afterlength.craft.units.Length;
import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Playing one string alone. The bow is a straight line lying on the strings in a plane square to the centre line; every string
 * there is a disc of its own diameter. The limits of a string are the common upper tangents with its neighbours, on the outer
 * sides the line through the edge of the waist; the clear angle is what lies between them. {@link BowSection} has the formulas,
 * {@link BowMap} many places at once.
 */
public final class BowClearance {
    private final BridgeShape shape;
    private final BowPlace place;
    private final BowSection section;

    private BowClearance(BridgeShape shape, BowPlace place) {
        this.shape = shape;
        this.place = place;
        section = new WaistEdges(shape.inputs()).section(StringRun.all(shape), place.distance_mm());
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
            strings.add(BowedString.of(shape.strings().get(i).name(), inner, section.limits(i, touch(i))));
        }
        return new BowReading(place, strings, caveats());
    }

    private Touch touch(int string) {
        double speaking_mm = shape.inputs().speakingLength_mm();
        FittedString fitted = shape.inputs().strings().get(string);
        double stopped_mm = place.stoppedAt_mm().getOrDefault(fitted.name(), speaking_mm);
        double tension_N = fitted.pull().findTension_N(speaking_mm).orElse(Double.NaN);
        return Touch.of(stopped_mm, place.distance_mm(), place.force_N(), tension_N);
    }

    private List<Caveat> caveats() {
        List<Caveat> caveats = new ArrayList<>();
        BridgeInputs inputs = shape.inputs();
        if (inputs.board().scoop_mm() == null && !place.stoppedAt_mm().isEmpty()) {
            caveats.add(new Caveat.ScoopNotMeasured());
        }
        if (inputs.waist() == null) {
            caveats.add(new Caveat.WaistNotMeasured());
        }
        double boardEnd_mm = inputs.speakingLength_mm() - inputs.board().length_mm();
        if (place.distance_mm() > boardEnd_mm) {
            caveats.add(new Caveat.BowOverBoard(Length.ofMm(place.distance_mm()), Length.ofMm(boardEnd_mm)));
        }
        return caveats;
    }
}
