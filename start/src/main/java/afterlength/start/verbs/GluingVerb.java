package afterlength.start.verbs;

import afterlength.craft.glue.GluingCaveat;
import afterlength.craft.glue.Spread;
import afterlength.craft.glue.WindowSeconds;
import afterlength.craft.glue.WorkingWindow;
import afterlength.craft.units.Temperature;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How many seconds a film of hot hide glue stays workable on wood. */
final class GluingVerb implements Verb {
    private static final List<Temperature> PARTS =
            Stream.of(15, 20, 25, 30).map(Temperature::ofCelsius).toList();

    @Override
    public String name() {
        return "gluing";
    }

    @Override
    public String summary() {
        return "how many seconds a film of hot hide glue stays workable on wood, and what warming the parts gives";
    }

    @Override
    public String example() {
        return """
                {
                  "glue_C": 60,
                  "wood_C": 20,
                  "film_mm": 0.2,
                  "glue_to_water": 0.5,
                  "wood": "spruce",
                  "gel_C": 32,
                  "plate_mm": 2.5,
                  "room_C": 20
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  glue_C         of the glue on the brush, 20 to 65.6 °C; above, hide glue breaks down
                  wood_C         of the parts
                  film_mm        thickness of the film, 0.01 to 2 mm
                  glue_to_water  mass of dry glue to mass of water: 0.5 for one to two
                  wood           spruce, maple, or conductivity_W_mK, density_kg_m3 and heat_J_kgK of another
                  gel_C          optional: where this glue gels, usual 32 °C
                  plate_mm       optional: thickness of the part; without it the wood is taken as thick
                  room_C         optional: the air behind the plate, usual 20 °C
                  faces          optional: one (glue lies open on one face) or both (joint closed at once, half a film each)

                The answer holds window_s with low, typical and high, null where the wood does not make the glue gel within ten
                minutes; model, half-space or plate; valid_for_s, how long thick wood is a fair picture; temperature_at_s, points
                of seconds and °C; warmed_parts; and caveats.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        Optional<Spread> spread = SpreadDocument.read(question);
        if (spread.isEmpty() || question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        WorkingWindow window = WorkingWindow.of(spread.get());
        if (window instanceof WorkingWindow.Known known) {
            return new Reply.Answered(document(spread.get(), known));
        }
        return new Reply.Refused(((WorkingWindow.Refused) window).problems());
    }

    private static AnswerDocument document(Spread spread, WorkingWindow.Known window) {
        return new AnswerDocument()
                .put("window_s", seconds(window.seconds()))
                .put("model", window.model().word())
                .put("valid_for_s", finite(window.validFor_s()), Double::doubleValue)
                .putRows(
                        "temperature_at_s",
                        window.cooling().stream()
                                .map(point -> List.of(point.time_s(), point.film_C()))
                                .toList())
                .putObjects(
                        "warmed_parts",
                        WorkingWindow.onParts(spread, PARTS).stream()
                                .map(GluingVerb::warmed)
                                .toList())
                .putTexts(
                        "caveats",
                        window.caveats().stream().map(GluingCaveat::text).toList());
    }

    private static AnswerDocument warmed(WorkingWindow.WarmedPart part) {
        return new AnswerDocument()
                .put("wood_C", part.part().celsius())
                .put("window_s", seconds(((WorkingWindow.Known) part.window()).seconds()));
    }

    private static AnswerDocument seconds(WindowSeconds seconds) {
        return new AnswerDocument()
                .put("low", number(seconds.low_s()), Double::doubleValue)
                .put("typical", number(seconds.typical_s()), Double::doubleValue)
                .put("high", number(seconds.high_s()), Double::doubleValue);
    }

    private static Optional<Double> finite(double value) {
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }

    private static Optional<Double> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
