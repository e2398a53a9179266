package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** What makes a set of strings impossible, all at once. */
final class StringSetChecks {
    private static final Permitted LENGTH = Permitted.from(50, 2000, "mm");
    private static final Permitted A4 = Permitted.from(300, 600, "Hz");
    private static final Permitted DENSITY = Permitted.from(0.01, 200, "g/m");
    private static final Permitted DIAMETER = Permitted.from(0.01, 10, "mm");
    private static final Permitted MATERIAL = Permitted.from(500, 25000, "kg/m³");
    private static final Permitted TENSION = Permitted.from(0.1, 2000, "N");
    private static final Permitted ANGLE = Permitted.above(90, 180, "degrees");

    private static final String LEFT_OUT = "Weigh the string or take the value its maker states.";

    private final StringSet set;
    private final ProblemList problems = new ProblemList();

    private StringSetChecks(StringSet set) {
        this.set = set;
    }

    static List<Problem> problems(StringSet set) {
        StringSetChecks checks = new StringSetChecks(set);
        checks.whole();
        for (int i = 0; i < set.strings().size(); i++) {
            checks.string("/strings/" + i, set.strings().get(i));
        }
        checks.overBridge();
        return checks.problems.list();
    }

    private void whole() {
        String advice = "Measure along a string from nut to bridge.";
        problems.require(LENGTH, "/speaking_length_mm", "The speaking length", set.speakingLength_mm(), advice);
        problems.require(A4, "/a4_Hz", "The pitch of a", set.a4_Hz(), "Give the a the instrument is tuned to.");
        if (set.strings().isEmpty()) {
            problems.add("/strings", 0, "There are no strings; at least one is needed. List them from bass to treble.");
        }
    }

    private void string(String at, StringOrder string) {
        if (Pitch.find(string.note()).isEmpty()) {
            problems.add(
                    at + "/note",
                    string.note(),
                    "The note " + string.note() + " cannot be read; it must be a letter from A"
                            + " to G, sharps or flats, and an octave from 0 to 9. Write it such as G3, C#4 or Bb2.");
        }
        String of = " of string " + string.note();
        if (string.mass() instanceof StringMass.LinearDensity given) {
            problems.require(
                    DENSITY,
                    at + "/linear_density_g_m",
                    "The linear density" + of,
                    given.linearDensity_g_m(),
                    LEFT_OUT);
        } else if (string.mass() instanceof StringMass.Solid solid) {
            String micrometer = "Measure it with a micrometer.";
            problems.require(DIAMETER, at + "/diameter_mm", "The diameter" + of, solid.diameter_mm(), micrometer);
            problems.require(MATERIAL, at + "/density_kg_m3", "The density" + of, solid.density_kg_m3(), LEFT_OUT);
        } else if (string.mass() instanceof StringMass.FromTension given) {
            problems.require(TENSION, at + "/tension_N", "The tension" + of, given.tension_N(), LEFT_OUT);
        }
    }

    private void overBridge() {
        if (set.overBridge() instanceof StringBreak.Angle given) {
            String advice = "Measure between the two sides of the string; 180 degrees is a straight string.";
            problems.require(ANGLE, "/string_angle_deg", "The string angle", given.stringAngle_deg(), advice);
        } else if (set.overBridge() instanceof StringBreak.Heights heights) {
            new StringBreakChecks(heights, problems).look();
        }
    }
}
