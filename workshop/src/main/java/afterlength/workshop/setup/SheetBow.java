package afterlength.workshop.setup;

import afterlength.craft.setup.BowClearance;
import afterlength.craft.setup.BowPlace;
import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.StringPull;
import afterlength.workshop.desk.Figures;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The bow of a bridge sheet: a sixteenth of the string from the bridge (docs/sources.md#bow-hair-width), once lightly on open
 * strings, once at the octave with one newton, or lightly there too when a tension is not known.
 */
record SheetBow(BowReading open, BowReading octave) {
    private static final double PART_OF_STRING = 1.0 / 16;
    private static final double PRESSED_N = 1;

    /** Empty when the board ends before the octave. */
    static Optional<SheetBow> find(BridgeShape shape) {
        double speaking_mm = shape.inputs().speakingLength_mm();
        double distance_mm = speaking_mm * PART_OF_STRING;
        boolean known =
                shape.inputs().strings().stream().noneMatch(string -> string.pull() instanceof StringPull.Unknown);
        BowPlace octave = new BowPlace(
                distance_mm,
                known ? PRESSED_N : 0,
                shape.inputs().strings().stream()
                        .collect(Collectors.toMap(FittedString::name, string -> speaking_mm / 2, (one, same) -> one)));
        return BowClearance.at(shape, BowPlace.onOpenStrings(distance_mm, 0)) instanceof BowReading light
                        && BowClearance.at(shape, octave) instanceof BowReading stopped
                ? Optional.of(new SheetBow(light, stopped))
                : Optional.empty();
    }

    /** Where and how the bow lies, as one sentence. */
    String words() {
        return "The bow " + Figures.tenths(open.place().distance_mm())
                + " mm from the bridge: lightly on the open strings, and at the octave "
                + (octave.place().force_N() > 0
                        ? "pressed with " + Figures.tenths(octave.place().force_N()) + " N."
                        : "lightly too, because a tension is not known.");
    }
}
