package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeRefused;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.Crown;
import afterlength.craft.setup.TemplateCrown;
import afterlength.workshop.desk.Typed;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads what was typed on the set-up page. Fields are called as the keys of the bridge document, so a problem that the arithmetic
 * finds stands beside its field. What is not a number is noted here; what is a number but cannot be, by the arithmetic.
 */
final class SetupForm {
    static final int FEWEST_STRINGS = 3;
    static final int MOST_STRINGS = 6;

    /** Any number that can be written is let through to the arithmetic, which knows the permitted ranges. */
    static final double ANY = 1e9;

    static final String TEMPLATE = "crown/template_mm";
    private static final int LONGEST_TEMPLATE = 100_000;

    private final Typed typed;
    private final Map<BenchReading, Double> readings;
    private final CrownKind kind;
    private final SpacingKind spacing;
    private final StringForm strings;

    private SetupForm(Typed typed) {
        this.typed = typed;
        readings = readings(typed);
        kind = CrownKind.read(typed.raw("crown"));
        spacing = SpacingKind.read(typed.raw("spacing"));
        strings = StringForm.read(typed, readings, spacing == SpacingKind.GIVEN);
    }

    static SetupBench read(Typed typed) {
        return new SetupForm(typed).bench();
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

    private SetupBench bench() {
        BenchReading.TOGETHER.forEach(this::together);
        BridgeInputs inputs = inputs();
        double radius_mm = typed.raw("crown/radius_mm").isBlank() && kind != CrownKind.RADIUS
                ? inputs.board().radius_mm()
                : number("crown/radius_mm", "The radius of the crown");
        return new SetupBench(
                inputs.withCrown(crown(radius_mm)), radius_mm, typed.raw(TEMPLATE), strings.notes(), readings);
    }

    private BridgeInputs inputs() {
        return new BridgeInputs(
                number("speaking_length_mm", "The speaking length"),
                BenchReadings.board(
                        number("board_length_mm", "The board length"),
                        number("board_radius_mm", "The board radius"),
                        readings),
                spacing.spacing(outer("nut_spacing_mm", "The spacing at the nut"), strings.nutPlaces()),
                spacing.spacing(outer("bridge_spacing_mm", "The spacing at the bridge"), strings.bridgePlaces()),
                pair("nut_clearance_mm", "The clearance at the nut"),
                pair("board_end_clearance_mm", "The clearance at the board end"),
                typed.raw("clearance_convention").equals("upright")
                        ? ClearanceConvention.UPRIGHT
                        : ClearanceConvention.SQUARE,
                number("projection_mm", "The projection"),
                grooveFraction(),
                new TemplateCrown(List.of()),
                strings.fitted(),
                BenchReadings.waist(readings));
    }

    /** Where every string has its own place, nobody has to say how far apart the outer ones are. */
    private double outer(String name, String label) {
        return spacing == SpacingKind.GIVEN ? Double.NaN : number(name, label);
    }

    private Crown crown(double radius_mm) {
        TemplateText template = TemplateText.read(typed.text(TEMPLATE, "The template", LONGEST_TEMPLATE));
        @Nullable String problem = template.problem();
        if (kind == CrownKind.TEMPLATE && problem != null) {
            typed.note(TEMPLATE, problem);
        } else if (kind == CrownKind.TEMPLATE && template.points().isEmpty()) {
            typed.note(
                    TEMPLATE,
                    "The template is missing. Type its points, paste a path, or take the crown as it is drawn.");
        }
        return kind.crown(radius_mm, new TemplateCrown(template.points()));
    }

    private BassTreble pair(String name, String label) {
        return new BassTreble(number(name + "/bass", label + ", bass"), number(name + "/treble", label + ", treble"));
    }

    private double grooveFraction() {
        return typed.raw("groove_fraction").isBlank()
                ? BridgeInputs.USUAL_GROOVE_FRACTION
                : typed.requiredDecimal("groove_fraction", "The depth of the groove", "of the diameter", 0, 1);
    }

    private double number(String name, String label) {
        return number(typed, name, label);
    }

    static double number(Typed typed, String name, String label) {
        if (typed.raw(name).isBlank()) {
            typed.note(name, label + " is missing. Measure it and write it in mm, such as 12.5 or 12,5.");
            return Double.NaN;
        }
        return typed.requiredDecimal(name, label, "mm", -ANY, ANY);
    }

    private static Map<BenchReading, Double> readings(Typed typed) {
        Map<BenchReading, Double> readings = new EnumMap<>(BenchReading.class);
        for (BenchReading reading : BenchReading.values()) {
            @Nullable Double value = typed.decimal(reading.field(), reading.label(), reading.unit(), -ANY, ANY);
            if (value != null) {
                readings.put(reading, value);
            }
        }
        return readings;
    }

    private void together(List<BenchReading> pair) {
        missing(pair.get(0), pair.get(1));
        missing(pair.get(1), pair.get(0));
    }

    private void missing(BenchReading one, BenchReading other) {
        if (readings.containsKey(one) && typed.raw(other.field()).isBlank()) {
            typed.note(
                    other.field(),
                    other.label() + " is missing; it belongs to “" + one.label()
                            + "”. Measure both, or leave both out.");
        }
    }

    /** How many strings the form shows. */
    static int count(Typed typed) {
        String text = typed.raw("string_count");
        int count = text.matches("\\d") ? Integer.parseInt(text) : 4;
        return Math.max(FEWEST_STRINGS, Math.min(MOST_STRINGS, count));
    }
}
