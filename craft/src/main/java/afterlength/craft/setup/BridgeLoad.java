package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import afterlength.craft.units.Problem;
import java.util.List;

/**
 * The strings' thrust on bridge and feet, as vectors in space. Each string pulls the bridge with its tension along either side:
 * {@code T·(u_nut + u_tail)}; in a plane that is {@code 2 T cos(θ/2)} along the line halving the angle, tipped towards the board
 * by {@code (a_tail - a_neck)/2}. With the strings spreading towards the bridge a small part of the pull is lost sideways.
 *
 * <p>The feet share by moments about the bass foot, the sideways part acting at string height. Left out: friction in the grooves
 * (both sides are given the same tension) and what the bow adds.
 *
 * @param strings from bass to treble
 * @param lean of the thrust of all strings together
 * @param trebleFoot part of the whole load on the treble foot
 */
public record BridgeLoad(List<StringThrust> strings, Angle lean, double trebleFoot) implements LoadAnswer {
    public BridgeLoad {
        strings = List.copyOf(strings);
    }

    /**
     * The load on a bridge that was drawn.
     *
     * @param halfFeet_mm from the centre line to the middle of a foot
     */
    public static LoadAnswer of(BridgeShape shape, TailEnd tail, double halfFeet_mm) {
        List<Problem> problems = LoadChecks.problems(shape, tail, halfFeet_mm);
        return problems.isEmpty() ? new BridgeThrust(shape, tail, halfFeet_mm).load() : new LoadRefused(problems);
    }

    public Force totalTension() {
        return Force.ofNewton(strings.stream()
                .mapToDouble(string -> string.tension().newton())
                .sum());
    }

    public Force totalDownforce() {
        return Force.ofNewton(strings.stream()
                .mapToDouble(string -> string.downforce().newton())
                .sum());
    }

    public Force onTrebleFoot() {
        return Force.ofNewton(trebleFoot * totalDownforce().newton());
    }

    public Force onBassFoot() {
        return Force.ofNewton((1 - trebleFoot) * totalDownforce().newton());
    }
}
