package afterlength.craft.setup;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The strings one by one, and how they lie beside each other. */
final class StringChecks {
    private static final int FEWEST = 3;
    private static final int MOST = 6;
    private static final Permitted DIAMETER = Permitted.from(0.01, 10, "mm");
    private static final Permitted TENSION = Permitted.from(0.1, 2000, "N");
    private static final Permitted DENSITY = Permitted.from(0.01, 200, "g/m");
    private static final Permitted FREQUENCY = Permitted.from(10, 5000, "Hz");

    private static final String LEFT_OUT = "Leave it out when it is not known.";

    private final double speakingLength_mm;
    private final List<FittedString> strings;
    private final ProblemList problems;

    private StringChecks(BridgeInputs inputs, ProblemList problems) {
        speakingLength_mm = inputs.speakingLength_mm();
        strings = inputs.strings();
        this.problems = problems;
    }

    static void look(BridgeInputs inputs, ProblemList problems) {
        StringChecks checks = new StringChecks(inputs, problems);
        if (checks.count()) {
            checks.each();
            SpacingChecks.look(inputs, problems);
        }
    }

    private boolean count() {
        if (strings.size() < FEWEST || strings.size() > MOST) {
            problems.add(
                    "/strings",
                    strings.size(),
                    "There are " + strings.size()
                            + " strings; a bridge is drawn for 3 to 6. List every string from bass to" + " treble.");
            return false;
        }
        return true;
    }

    private void each() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < strings.size(); i++) {
            FittedString string = strings.get(i);
            String at = "/strings/" + i;
            name(at + "/name", string.name(), i, names.add(string.name()));
            String what = "The diameter of string " + called(i);
            problems.require(
                    DIAMETER,
                    at + "/diameter_mm",
                    what,
                    string.diameter_mm(),
                    "Measure it with a micrometer at the bridge.");
            pull(at, "string " + called(i), string.pull());
        }
    }

    private void name(String at, String name, int i, boolean isNew) {
        if (name.isBlank()) {
            problems.add(
                    at, name, "String " + (i + 1) + " has no name; each needs one. Write its open note, such as G.");
        } else if (!isNew) {
            problems.add(
                    at, name, "Two strings are named " + name + "; each needs a name of its own. Add a number to one.");
        }
    }

    private void pull(String at, String which, StringPull pull) {
        if (pull instanceof StringPull.Tension given) {
            problems.require(TENSION, at + "/tension_N", "The tension of " + which, given.tension_N(), LEFT_OUT);
        } else if (pull instanceof StringPull.DensityAndPitch given) {
            densityAndPitch(at, which, given);
        }
    }

    private void densityAndPitch(String at, String which, StringPull.DensityAndPitch given) {
        double density_g_m = given.linearDensity_g_m();
        String density = "The linear density of " + which;
        problems.require(DENSITY, at + "/linear_density_g_m", density, density_g_m, LEFT_OUT);
        problems.require(FREQUENCY, at + "/frequency_Hz", "The frequency of " + which, given.frequency_Hz(), LEFT_OUT);
        double tension_N = given.findTension_N(speakingLength_mm).orElseThrow();
        if (DENSITY.holds(density_g_m) && FREQUENCY.holds(given.frequency_Hz()) && Double.isFinite(tension_N)) {
            String tension = "The tension that follows for " + which;
            String advice = "Check linear density, pitch and speaking length.";
            problems.require(TENSION, at + "/linear_density_g_m", tension, tension_N, advice);
        }
    }

    private String called(int i) {
        String name = strings.get(i).name();
        return name.isBlank() ? String.valueOf(i + 1) : name;
    }
}
