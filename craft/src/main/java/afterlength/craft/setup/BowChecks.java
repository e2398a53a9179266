package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

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
                .forEach(stop -> checks.stop(stop.getKey(), stop.getValue()));
        return checks.problems.list();
    }

    private void bow() {
        distance("/bow/distance_mm", place.distance_mm(), shape, problems);
        force("/bow/force_N", place.force_N(), problems);
        if (place.force_N() > 0) {
            tensions(shape, problems);
        }
    }

    static void distance(String at, double distance_mm, BridgeShape shape, ProblemList problems) {
        double speaking_mm = shape.inputs().speakingLength_mm();
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

    static void tensions(BridgeShape shape, ProblemList problems) {
        List<FittedString> strings = shape.inputs().strings();
        for (int i = 0; i < strings.size(); i++) {
            if (strings.get(i)
                    .pull()
                    .findTension_N(shape.inputs().speakingLength_mm())
                    .isEmpty()) {
                problems.add(
                        "/strings/" + i + "/tension_N",
                        null,
                        "The tension of string " + strings.get(i).name()
                                + " is not known; a pressing bow needs it. Give the tension, or a bow force of 0 N.");
            }
        }
    }

    private void stop(String name, double stopped_mm) {
        String at = "/stopped_at_mm/" + name.replace("~", "~0").replace("/", "~1");
        List<FittedString> strings = shape.inputs().strings();
        int string = IntStream.range(0, strings.size())
                .filter(i -> strings.get(i).name().equals(name))
                .findFirst()
                .orElse(-1);
        if (string < 0) {
            problems.add(
                    at,
                    stopped_mm,
                    "No string is named " + name + "; a stopped string must be one of "
                            + String.join(
                                    ", ",
                                    strings.stream().map(FittedString::name).toList()) + ". Use its name.");
            return;
        }
        double speaking_mm = shape.inputs().speakingLength_mm();
        double boardEnd_mm = speaking_mm - shape.inputs().board().length_mm();
        if (!(stopped_mm >= boardEnd_mm && stopped_mm < speaking_mm)) {
            problems.add(
                    at,
                    stopped_mm,
                    "String " + name + " is stopped " + PlainNumber.of(stopped_mm, "mm")
                            + " from the bridge; it must be at least " + PlainNumber.of(boardEnd_mm, "mm")
                            + ", where the board ends, and less than the speaking length of "
                            + PlainNumber.of(speaking_mm, "mm") + ". Measure from the bridge to the finger.");
        } else if (place.distance_mm() >= stopped_mm) {
            problems.add(
                    at,
                    stopped_mm,
                    "String " + name + " is stopped " + PlainNumber.of(stopped_mm, "mm")
                            + " from the bridge; it must be more than " + PlainNumber.of(place.distance_mm(), "mm")
                            + ", for the bow plays between finger and bridge. Move the bow or the finger.");
        } else if (!StringRun.of(shape, string).hasBoardUnder(speaking_mm - stopped_mm)) {
            problems.add(
                    at,
                    stopped_mm,
                    "String " + name + " is stopped " + PlainNumber.of(stopped_mm, "mm")
                            + " from the bridge; the arc of the board must reach under it and does not. Check the string spacing and"
                            + " the board radius.");
        }
    }
}
