package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.List;
import java.util.Map;

/** What makes playing at this place impossible, all at once. */
public final class BowChecks {
    static final Permitted FORCE = Permitted.from(0, 50, "N");

    private final BridgeShape shape;
    private final BowPlace place;
    private final ProblemList problems = new ProblemList();

    private BowChecks(BridgeShape shape, BowPlace place) {
        this.shape = shape;
        this.place = place;
    }

    public static List<Problem> problems(BridgeShape shape, BowPlace place) {
        BowChecks checks = new BowChecks(shape, place);
        checks.bow();
        place.stoppedAt_mm().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(stop -> new BowStopChecks(shape, place, checks.problems).look(stop.getKey(), stop.getValue()));
        return checks.problems.list();
    }

    private void bow() {
        distance("/bow/distance_mm", place.distance_mm(), shape.inputs(), problems);
        force("/bow/force_N", place.force_N(), problems);
        if (place.force_N() > 0) {
            tensions(shape.inputs(), problems);
        }
    }

    static void distance(String at, double distance_mm, BridgeInputs inputs, ProblemList problems) {
        double speaking_mm = inputs.speakingLength_mm();
        if (!(distance_mm > 0 && distance_mm < speaking_mm)) {
            problems.add(
                    at,
                    distance_mm,
                    "The distance of the bow from the bridge is " + PlainNumber.of(distance_mm, "mm")
                            + "; it must be more than 0 mm and less than the speaking length of "
                            + PlainNumber.of(speaking_mm, "mm") + ". Measure along the strings.");
        }
    }

    static void force(String at, double force_N, ProblemList problems) {
        problems.require(
                FORCE,
                at,
                "The bow force",
                force_N,
                "About 0.3 to 1.5 N is usual on a violin; 0 looks at the strings" + " without pressing them.");
    }

    static void tensions(BridgeInputs inputs, ProblemList problems) {
        List<FittedString> strings = inputs.strings();
        for (int i = 0; i < strings.size(); i++) {
            if (inputs.findTension_N(i).isEmpty()) {
                problems.add(
                        "/strings/" + i + "/tension_N",
                        null,
                        "The tension of string " + strings.get(i).name()
                                + " is not known; a pressing bow needs it. Give the tension, or a bow force of 0 N.");
            }
        }
    }
}
