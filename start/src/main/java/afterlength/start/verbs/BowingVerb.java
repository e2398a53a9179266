package afterlength.start.verbs;

import afterlength.craft.setup.BowAnswer;
import afterlength.craft.setup.BowClearance;
import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BowRefused;
import afterlength.craft.setup.BowedString;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeRefused;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import afterlength.craft.units.Length;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.workshop.setup.BridgeWords;
import java.util.ArrayList;
import java.util.List;

/** How much room the bow has to play each string alone. */
final class BowingVerb implements Verb {
    @Override
    public String name() {
        return "bowing";
    }

    @Override
    public String summary() {
        return "how much room the bow has to play each string alone, open or stopped, lightly or pressed";
    }

    @Override
    public String example() {
        String bridge = BridgeDocument.EXAMPLE.strip();
        return bridge.substring(0, bridge.length() - 2) + """
                ,
                  "waist_width_mm": 110,
                  "edge_drop_mm": 13,
                  "scoop_mm": { "bass": 0.8, "treble": 0.4 },
                  "bow": { "distance_mm": 30, "force_N": 1.0 },
                  "stopped_at_mm": { "A": 164 }
                }
                """;
    }

    @Override
    public String keys() {
        return BridgeDocument.KEYS + """
                  bow                     distance_mm from the bridge, and force_N; 0 N looks without pressing
                  stopped_at_mm           optional: by name of the string, from the bridge to the finger

                The answer holds strings, each with name, clear_angle_deg (0 when the limits have crossed), limit_bass_deg and
                limit_treble_deg (steepest and flattest bow, rising to the treble positive), margin_mm over the line lying on
                the neighbours, and meets_neighbours_N, the force at which no room is left; null where not defined. Then
                tightest, the name of the string with the least room, and caveats. A pressed string needs its tension.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        BridgeDocument document = BridgeDocument.read(question);
        BowDocument bow = BowDocument.read(question);
        BridgeAnswer bridge = Bridge.shape(document.inputs());
        if (bridge instanceof BridgeShape shape) {
            BowAnswer answer = BowClearance.at(shape, bow.place());
            if (answer instanceof BowReading reading && !question.hasProblems()) {
                return new Reply.Answered(answered(document, shape, reading));
            }
            if (answer instanceof BowRefused refused) {
                question.refuseAll(refused.problems());
            }
        } else {
            question.refuseAll(((BridgeRefused) bridge).problems());
        }
        return new Reply.Refused(question.problems());
    }

    private static AnswerDocument answered(BridgeDocument document, BridgeShape shape, BowReading reading) {
        List<String> caveats = new ArrayList<>(document.caveats());
        shape.caveats().forEach(caveat -> caveats.add(BridgeWords.of(caveat)));
        reading.caveats().forEach(caveat -> caveats.add(BridgeWords.of(caveat)));
        return new AnswerDocument()
                .putObjects(
                        "strings",
                        reading.strings().stream().map(BowingVerb::bowed).toList())
                .putText("tightest", reading.findTightest().map(BowedString::name))
                .putTexts("caveats", caveats);
    }

    private static AnswerDocument bowed(BowedString string) {
        return new AnswerDocument()
                .put("name", string.name())
                .put("clear_angle_deg", string.findClearAngle(), Angle::deg)
                .put("limit_bass_deg", string.findLimitBass(), Angle::deg)
                .put("limit_treble_deg", string.findLimitTreble(), Angle::deg)
                .put("margin_mm", string.findMargin(), Length::mm)
                .put("meets_neighbours_N", string.findForceMeetingNeighbours(), Force::newton);
    }
}
