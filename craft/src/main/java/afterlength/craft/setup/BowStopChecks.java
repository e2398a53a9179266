package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import java.util.List;

/** A finger must hold a string that exists, on the board, beyond the bow. */
final class BowStopChecks {
    private final BridgeShape shape;
    private final BowPlace place;
    private final ProblemList problems;

    BowStopChecks(BridgeShape shape, BowPlace place, ProblemList problems) {
        this.shape = shape;
        this.place = place;
        this.problems = problems;
    }

    void look(String name, double stopped_mm) {
        List<String> names = shape.strings().stream().map(SeatedString::name).toList();
        int string = names.indexOf(name);
        if (string < 0) {
            add(
                    name,
                    stopped_mm,
                    "No string is named " + name + "; a stopped string must be one of " + String.join(", ", names)
                            + ". Use its name.");
        } else if (isOnBoard(name, stopped_mm) && !boardReaches(string, stopped_mm)) {
            add(
                    name,
                    stopped_mm,
                    stopped(name, stopped_mm) + "; the arc of the board must reach under it and does not. Check"
                            + " the string spacing and the board radius.");
        }
    }

    private boolean isOnBoard(String name, double stopped_mm) {
        double speaking_mm = shape.inputs().speakingLength_mm();
        double boardEnd_mm = speaking_mm - shape.inputs().board().length_mm();
        if (!(stopped_mm >= boardEnd_mm && stopped_mm < speaking_mm)) {
            add(
                    name,
                    stopped_mm,
                    stopped(name, stopped_mm) + "; it must be at least " + PlainNumber.of(boardEnd_mm, "mm")
                            + ", where the board ends, and less than the speaking length of "
                            + PlainNumber.of(speaking_mm, "mm")
                            + ". Measure from the bridge to the finger.");
            return false;
        }
        if (place.distance_mm() >= stopped_mm) {
            add(
                    name,
                    stopped_mm,
                    stopped(name, stopped_mm) + "; it must be more than "
                            + PlainNumber.of(place.distance_mm(), "mm")
                            + ", for the bow plays between finger and bridge. Move the bow or the finger.");
            return false;
        }
        return true;
    }

    private boolean boardReaches(int string, double stopped_mm) {
        return StringRun.of(shape, string).hasBoardUnder(shape.inputs().speakingLength_mm() - stopped_mm);
    }

    private static String stopped(String name, double stopped_mm) {
        return "String " + name + " is stopped " + PlainNumber.of(stopped_mm, "mm") + " from the bridge";
    }

    private void add(String name, double stopped_mm, String message) {
        problems.add("/stopped_at_mm/" + name.replace("~", "~0").replace("/", "~1"), stopped_mm, message);
    }
}
