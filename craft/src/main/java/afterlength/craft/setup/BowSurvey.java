package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Lists every place on a map of the bow that can be played; for strings whose heights on the bridge may still be tried out. */
final class BowSurvey {
    private final BridgeInputs inputs;
    private final BowMapAxes axes;
    private final StringRun[] runs;
    private final List<Played> places = new ArrayList<>();

    private BowSurvey(BridgeInputs inputs, BowMapAxes axes, StringRun[] runs) {
        this.inputs = inputs;
        this.axes = axes;
        this.runs = runs;
    }

    /** From bass to treble, from open to high, from near the bridge, from light to heavy, in the order of the axes. */
    static List<Played> places(BridgeInputs inputs, BowMapAxes axes, StringRun[] runs) {
        BowSurvey survey = new BowSurvey(inputs, axes, runs);
        for (int string = 0; string < runs.length; string++) {
            survey.string(string);
        }
        return survey.places;
    }

    /** Whether any inner string can be played anywhere; its height does not matter to that. */
    static boolean hasPlaces(BridgeInputs inputs, BowMapAxes axes, StringLayout layout) {
        StringRun[] runs = IntStream.range(0, layout.count())
                .mapToObj(i -> StringRun.of(inputs, layout, i, 0))
                .toArray(StringRun[]::new);
        return places(inputs, axes, runs).stream()
                .anyMatch(played -> played.string() > 0 && played.string() < runs.length - 1);
    }

    private void string(int string) {
        double length_mm = inputs.speakingLength_mm();
        double tension_N = inputs.findTension_N(string).orElse(Double.NaN);
        for (int semitones : axes.semitones()) {
            double stopped_mm = BowMapAxes.stopped_mm(length_mm, semitones);
            for (double distance_mm : axes.distances_mm()) {
                if (playable(runs[string], semitones, stopped_mm, distance_mm)) {
                    for (double force_N : axes.forces_N()) {
                        places.add(Played.of(string, distance_mm, stopped_mm, semitones == 0, tension_N, force_N)
                                .at(semitones));
                    }
                }
            }
        }
    }

    private boolean playable(StringRun run, int semitones, double stopped_mm, double distance_mm) {
        double finger_mm = inputs.speakingLength_mm() - stopped_mm;
        boolean onBoard = finger_mm <= inputs.board().length_mm() && run.hasBoardUnder(finger_mm);
        boolean nearEnough = distance_mm < stopped_mm && distance_mm <= axes.farthestPart() * stopped_mm;
        return nearEnough && (semitones == 0 || onBoard);
    }
}
