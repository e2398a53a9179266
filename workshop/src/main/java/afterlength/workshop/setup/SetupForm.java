package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeRefused;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringPull;
import afterlength.craft.setup.StringSpacing;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads what was typed on the set-up page. Fields are called as the keys of the bridge document, so a problem that the arithmetic
 * finds stands beside its field. What is not a number is noted here; what is a number but cannot be, by the arithmetic.
 */
final class SetupForm {
    static final int FEWEST_STRINGS = 3;
    static final int MOST_STRINGS = 6;

    /** Any number that can be written is let through to the arithmetic, which knows the permitted ranges. */
    private static final double ANY = 1e9;

    private final Typed typed;

    private SetupForm(Typed typed) {
        this.typed = typed;
    }

    static BridgeInputs read(Typed typed) {
        return new SetupForm(typed).inputs();
    }

    /** Solves the bridge and notes every problem that reading has not noted already. */
    static BridgeAnswer solve(Typed typed, BridgeInputs inputs) {
        BridgeAnswer answer = Bridge.shape(inputs);
        if (answer instanceof BridgeRefused refused) {
            typed.note(refused.problems().stream()
                    .filter(problem -> typed.problem(problem.at().substring(1)).isEmpty())
                    .toList());
        }
        return answer;
    }

    private BridgeInputs inputs() {
        return new BridgeInputs(
                number("speaking_length_mm", "The speaking length"),
                Board.ofOneRadius(
                        number("board_length_mm", "The board length"), number("board_radius_mm", "The board radius")),
                new StringSpacing.ByCentres(number("nut_spacing_mm", "The spacing at the nut")),
                new StringSpacing.ByCentres(number("bridge_spacing_mm", "The spacing at the bridge")),
                pair("nut_clearance_mm", "The clearance at the nut"),
                pair("board_end_clearance_mm", "The clearance at the board end"),
                typed.raw("clearance_convention").equals("upright")
                        ? ClearanceConvention.UPRIGHT
                        : ClearanceConvention.SQUARE,
                number("projection_mm", "The projection"),
                grooveFraction(),
                new RadiusCrown(number("crown/radius_mm", "The radius of the crown")),
                strings(),
                null);
    }

    private BassTreble pair(String name, String label) {
        return new BassTreble(number(name + "/bass", label + ", bass"), number(name + "/treble", label + ", treble"));
    }

    private double grooveFraction() {
        return typed.raw("groove_fraction").isBlank()
                ? BridgeInputs.USUAL_GROOVE_FRACTION
                : typed.requiredDecimal("groove_fraction", "The depth of the groove", "of the diameter", 0, 1);
    }

    private List<FittedString> strings() {
        List<FittedString> strings = new ArrayList<>();
        for (int n = 0; n < count(typed); n++) {
            String at = "strings/" + n + "/";
            String name = typed.required(at + "name", "The name of string " + (n + 1), 12);
            Double tension = typed.decimal(at + "tension_N", "The tension of string " + (n + 1), "N", 0, 2000);
            double diameter = number(at + "diameter_mm", "The diameter of string " + (n + 1));
            strings.add(new FittedString(
                    name, diameter, tension == null ? new StringPull.Unknown() : new StringPull.Tension(tension)));
        }
        return strings;
    }

    private double number(String name, String label) {
        if (typed.raw(name).isBlank()) {
            typed.note(name, label + " is missing. Measure it and write it in mm, such as 12.5 or 12,5.");
            return Double.NaN;
        }
        return typed.requiredDecimal(name, label, "mm", -ANY, ANY);
    }

    /** How many strings the form shows. */
    static int count(Typed typed) {
        String text = typed.raw("string_count");
        int count = text.matches("\\d") ? Integer.parseInt(text) : 4;
        return Math.max(FEWEST_STRINGS, Math.min(MOST_STRINGS, count));
    }

    static Map<String, String> typedOf(BridgeInputs in) {
        Map<String, String> typed = new HashMap<>();
        put(typed, "speaking_length_mm", in.speakingLength_mm());
        put(typed, "board_length_mm", in.board().length_mm());
        put(typed, "board_radius_mm", in.board().radius_mm());
        put(typed, "nut_spacing_mm", outer(in.nutSpacing()));
        put(typed, "bridge_spacing_mm", outer(in.bridgeSpacing()));
        put(typed, "nut_clearance_mm/bass", in.nutClearance_mm().bass_mm());
        put(typed, "nut_clearance_mm/treble", in.nutClearance_mm().treble_mm());
        put(typed, "board_end_clearance_mm/bass", in.boardEndClearance_mm().bass_mm());
        put(typed, "board_end_clearance_mm/treble", in.boardEndClearance_mm().treble_mm());
        put(typed, "projection_mm", in.projection_mm());
        typed.put("groove_fraction", Figures.plain(in.grooveFraction()));
        typed.put(
                "clearance_convention", in.clearanceConvention() == ClearanceConvention.UPRIGHT ? "upright" : "square");
        if (in.crown() instanceof RadiusCrown crown) {
            put(typed, "crown/radius_mm", crown.radius_mm());
        }
        typed.put("string_count", Integer.toString(in.strings().size()));
        for (int n = 0; n < in.strings().size(); n++) {
            FittedString string = in.strings().get(n);
            typed.put("strings/" + n + "/name", string.name());
            put(typed, "strings/" + n + "/diameter_mm", string.diameter_mm());
            if (string.pull() instanceof StringPull.Tension known) {
                put(typed, "strings/" + n + "/tension_N", known.tension_N());
            }
        }
        return typed;
    }

    private static double outer(StringSpacing spacing) {
        return spacing instanceof StringSpacing.ByCentres centres ? centres.outer_mm() : Double.NaN;
    }

    private static void put(Map<String, String> typed, String name, double value) {
        typed.put(name, Figures.typed(value));
    }
}
