package afterlength.workshop.setup;

import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.Pitch;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The strings as they were typed, from bass to treble.
 *
 * @param nutPlaces where each lies at the nut; empty when the places follow from the spacing
 */
record StringForm(List<FittedString> fitted, List<String> notes, List<Double> nutPlaces, List<Double> bridgePlaces) {

    static StringForm read(Typed typed, Map<BenchReading, Double> readings, boolean places) {
        List<FittedString> fitted = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        List<Double> nut = new ArrayList<>();
        List<Double> bridge = new ArrayList<>();
        for (int n = 0; n < SetupForm.count(typed); n++) {
            String at = "strings/" + n + "/";
            String which = "string " + (n + 1);
            notes.add(note(typed, at, which));
            fitted.add(string(typed, at, which, notes.get(n), BenchStrings.a4_Hz(readings)));
            if (places) {
                nut.add(SetupForm.number(typed, at + "nut_y_mm", "The place at the nut of " + which));
                bridge.add(SetupForm.number(typed, at + "bridge_y_mm", "The place at the bridge of " + which));
            }
        }
        return new StringForm(fitted, notes, nut, bridge);
    }

    private static FittedString string(Typed typed, String at, String which, String note, double a4_Hz) {
        String name = typed.required(at + "name", "The name of " + which, 12);
        @Nullable Double tension = typed.decimal(at + "tension_N", "The tension of " + which, "N", 0, 2000);
        @Nullable
        Double density = typed.decimal(at + "linear_density_g_m", "The mass per length of " + which, "g/m", 0, 1000);
        if (density != null && tension != null) {
            typed.note(
                    at + "linear_density_g_m",
                    "The mass per length of " + which
                            + " and its tension are both given; one follows from the other. Leave one out.");
        } else if (density != null && note.isEmpty()) {
            typed.note(
                    at + "note",
                    "The note of " + which
                            + " is missing; from a mass per length the tension follows only with it. Write it such as"
                            + " G3.");
        }
        double diameter = SetupForm.number(typed, at + "diameter_mm", "The diameter of " + which);
        return new FittedString(name, diameter, StringRow.pull(tension, density, note, a4_Hz));
    }

    private static String note(Typed typed, String at, String which) {
        String note = typed.text(at + "note", "The note of " + which, 6);
        if (!note.isEmpty() && Pitch.find(note).isEmpty()) {
            typed.note(
                    at + "note",
                    "The note of " + which + " is “" + note
                            + "”; it must be a letter and an octave, such as G3, C#4 or Bb2.");
        }
        return note;
    }
}
