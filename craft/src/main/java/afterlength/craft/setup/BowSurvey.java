package afterlength.craft.setup;

import java.util.function.Consumer;

/** Walks the map of the bow for strings whose heights on the bridge may be tried out. */
final class BowSurvey {
    private final BridgeInputs inputs;
    private final BowMapAxes axes;
    private final WaistEdges edges;
    private final double[] tensions_N;

    BowSurvey(BridgeInputs inputs, BowMapAxes axes) {
        this.inputs = inputs;
        this.axes = axes;
        edges = new WaistEdges(inputs);
        tensions_N = inputs.strings().stream()
                .mapToDouble(string ->
                        string.pull().findTension_N(inputs.speakingLength_mm()).orElse(Double.NaN))
                .toArray();
    }

    void visit(StringRun[] runs, Consumer<BowCell> visitor) {
        for (double distance_mm : axes.distances_mm()) {
            BowSection section = edges.section(runs, distance_mm);
            for (int string = 0; string < runs.length; string++) {
                for (int semitones : axes.semitones()) {
                    stop(section, runs[string], string, semitones, distance_mm, visitor);
                }
            }
        }
    }

    private void stop(
            BowSection section,
            StringRun run,
            int string,
            int semitones,
            double distance_mm,
            Consumer<BowCell> visitor) {
        double stopped_mm = BowMapAxes.stopped_mm(inputs.speakingLength_mm(), semitones);
        if (!playable(run, semitones, stopped_mm, distance_mm)) {
            return;
        }
        for (double force_N : axes.forces_N()) {
            BowLimits limits = section.limits(string, Touch.of(stopped_mm, distance_mm, force_N, tensions_N[string]));
            if (limits.hasBoth()) {
                visitor.accept(new BowCell(
                        string,
                        semitones,
                        distance_mm,
                        force_N,
                        Math.toDegrees(limits.opening_rad()),
                        limits.margin_mm(),
                        limits.meets_N()));
            }
        }
    }

    private boolean playable(StringRun run, int semitones, double stopped_mm, double distance_mm) {
        double finger_mm = inputs.speakingLength_mm() - stopped_mm;
        boolean onBoard = finger_mm <= inputs.board().length_mm() && run.hasBoardUnder(finger_mm);
        return distance_mm < stopped_mm && (semitones == 0 || onBoard);
    }
}
