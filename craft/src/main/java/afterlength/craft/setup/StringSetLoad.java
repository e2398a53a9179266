package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import afterlength.craft.units.Frequency;
import afterlength.craft.units.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a set of strings pulls at its pitch, and with how much of it the bridge is pressed down. Side view only: the splay of the
 * outer strings takes less than one part in a hundred; {@link BridgeLoad} reckons it in.
 *
 * @param lean how far the load tips towards the board, or null when the slopes are not known
 */
public record StringSetLoad(
        List<StringLoad> strings, @Nullable Angle lean) implements StringSetAnswer {
    public StringSetLoad {
        strings = List.copyOf(strings);
    }

    public static StringSetAnswer of(StringSet set) {
        List<Problem> problems = StringSetChecks.problems(set);
        if (!problems.isEmpty()) {
            return new StringSetRefused(problems);
        }
        OptionalDouble lean_deg = set.overBridge().findLean_deg();
        return new StringSetLoad(
                set.strings().stream().map(string -> load(set, string)).toList(),
                lean_deg.isPresent() ? Angle.ofDeg(lean_deg.getAsDouble()) : null);
    }

    private static StringLoad load(StringSet set, StringOrder string) {
        Frequency frequency = Pitch.find(string.note()).orElseThrow().frequency(set.a4_Hz());
        double density_g_m = string.mass().linearDensity_g_m(frequency.hertz(), set.speakingLength_mm());
        double tension_N = StringMechanics.tension_N(density_g_m, frequency.hertz(), set.speakingLength_mm());
        OptionalDouble angle_deg = set.overBridge().findStringAngle_deg();
        Force downforce = angle_deg.isPresent()
                ? Force.ofNewton(StringMechanics.downforce_N(tension_N, angle_deg.getAsDouble()))
                : null;
        return new StringLoad(string.note(), frequency, density_g_m, Force.ofNewton(tension_N), downforce);
    }

    public Force totalTension() {
        return Force.ofNewton(strings.stream()
                .mapToDouble(string -> string.tension().newton())
                .sum());
    }

    /** Empty when the break over the bridge is not known. */
    public Optional<Force> findTotalDownforce() {
        if (strings.stream().anyMatch(string -> string.downforce() == null)) {
            return Optional.empty();
        }
        return Optional.of(Force.ofNewton(strings.stream()
                .flatMap(string -> string.findDownforce().stream())
                .mapToDouble(Force::newton)
                .sum()));
    }

    public Optional<Angle> findLean() {
        return Optional.ofNullable(lean);
    }
}
