package afterlength.craft.setup;

/**
 * By how much a note sharpens because the finger stretches the string down to the board.
 *
 * <p>{@code ΔL = √(a² + c²) + √((L-a)² + c²) - L}, {@code ΔT = E A ΔL / L}, {@code cents = 600 log₂(1 + ΔT/T)}, with the string
 * pressed down by c at the distance a from the nut.
 *
 * <p>An upper bound: the string is taken as held at nut and bridge. Where it slips there, the stretch spreads over the whole
 * length from peg to tailpiece and the result is about a quarter lower. For a wound string E A is that of the core.
 */
public final class StoppedSharpening {
    private StoppedSharpening() {}

    /**
     * Cents by which a stopped note is sharp at most.
     *
     * @param speakingLength_mm from nut to bridge
     * @param fromNut_mm where the finger stops
     * @param pressed_mm from the open string down to the board there
     * @param stiffness_N elastic modulus times section, of the core when wound
     * @param tension_N of the open string
     */
    public static double atMost_cents(
            double speakingLength_mm, double fromNut_mm, double pressed_mm, double stiffness_N, double tension_N) {
        double stretched_mm = Math.hypot(fromNut_mm, pressed_mm)
                + Math.hypot(speakingLength_mm - fromNut_mm, pressed_mm)
                - speakingLength_mm;
        double more_N = stiffness_N * stretched_mm / speakingLength_mm;
        return 600 * Math.log1p(more_N / tension_N) / Math.log(2);
    }

    /** Elastic modulus times section of a solid string. */
    public static double solidStiffness_N(double diameter_mm, double modulus_GPa) {
        return modulus_GPa * 1000 * Math.PI * diameter_mm * diameter_mm / 4;
    }

    /** The same for a string of a bridge that was drawn, stopped at this distance from the bridge. */
    public static double atMost_cents(
            BridgeShape shape, int string, double stopped_mm, double stiffness_N, double tension_N) {
        StringRun run = StringRun.of(shape, string);
        double fromNut_mm = run.speakingLength_mm() - stopped_mm;
        double pressed_mm = run.openUnderside_mm(fromNut_mm) - run.boardUnder_mm(fromNut_mm);
        return atMost_cents(run.speakingLength_mm(), fromNut_mm, pressed_mm, stiffness_N, tension_N);
    }
}
