package afterlength.start.verbs;

import afterlength.craft.setup.StringLoad;
import afterlength.craft.setup.StringMass;
import afterlength.craft.setup.StringSet;
import afterlength.craft.setup.StringSetAnswer;
import afterlength.craft.setup.StringSetLoad;
import afterlength.craft.setup.StringSetRefused;
import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a set of strings pulls at its pitch, and what the bridge carries of it. */
final class StringsVerb implements Verb {
    @Override
    public String name() {
        return "strings";
    }

    @Override
    public String summary() {
        return "what a set of strings pulls at its pitch, and how hard it presses the bridge down";
    }

    @Override
    public String example() {
        return """
                {
                  "speaking_length_mm": 328,
                  "a4_Hz": 440,
                  "strings": [
                    { "note": "G3", "linear_density_g_m": 2.66 },
                    { "note": "D4", "tension_N": 45 },
                    { "note": "A4", "diameter_mm": 0.75, "density_kg_m3": 1300 },
                    { "note": "E5", "diameter_mm": 0.26, "density_kg_m3": 7850 }
                  ],
                  "string_angle_deg": 158
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  speaking_length_mm  from nut to bridge, measured
                  a4_Hz               optional: the pitch of a, usual 440
                  strings             each with note, such as G3, C#4 or Bb2, and one of: linear_density_g_m;
                                      diameter_mm with density_kg_m3 (solid strings only); tension_N
                  string_angle_deg    optional: between the two sides of a string at the bridge
                  break               optional, in place of the angle: after_length_mm, tail_height_mm,
                                      bridge_height_mm and neck_slope_deg, heights over one plane along the body

                The answer holds strings, each with note, frequency_Hz, linear_density_g_m, tension_N and downforce_N; totals
                with tension_N, tension_kgf, downforce_N and downforce_kgf; lean_deg, how far the load tips towards the
                board; and caveats. What cannot be known without an angle is null; the lean needs the heights.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        StringSet set = StringSetDocument.read(question);
        StringSetAnswer answer = StringSetLoad.of(set);
        if (answer instanceof StringSetRefused refused) {
            question.refuseAll(refused.problems());
        }
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        return new Reply.Answered(answered(set, (StringSetLoad) answer));
    }

    private static AnswerDocument answered(StringSet set, StringSetLoad load) {
        return new AnswerDocument()
                .putObjects(
                        "strings",
                        load.strings().stream().map(StringsVerb::string).toList())
                .put("totals", totals(load))
                .put("lean_deg", load.findLean(), Angle::deg)
                .putTexts("caveats", caveats(set));
    }

    private static AnswerDocument string(StringLoad string) {
        return new AnswerDocument()
                .put("note", string.note())
                .put("frequency_Hz", string.frequency().hertz())
                .put("linear_density_g_m", string.linearDensity_g_m())
                .put("tension_N", string.tension().newton())
                .put("downforce_N", string.findDownforce(), Force::newton);
    }

    private static AnswerDocument totals(StringSetLoad load) {
        Optional<Force> downforce = load.findTotalDownforce();
        return new AnswerDocument()
                .put("tension_N", load.totalTension().newton())
                .put("tension_kgf", load.totalTension().kgf())
                .put("downforce_N", downforce, Force::newton)
                .put("downforce_kgf", downforce, Force::kgf);
    }

    private static List<String> caveats(StringSet set) {
        List<String> caveats = new ArrayList<>();
        caveats.add(
                "Reckoned for thin flexible strings in the side view; the splay of the outer strings takes less than one"
                        + " part in a hundred off the downforce.");
        if (set.strings().stream().anyMatch(string -> string.mass() instanceof StringMass.Solid)) {
            caveats.add(
                    "A diameter gives the weight of a solid string only; for a wound one weigh it or take its linear density.");
        }
        return caveats;
    }
}
