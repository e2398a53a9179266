package afterlength.workshop.instrument;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.HashMap;
import java.util.Map;

/** Reads an instrument and its story from what was typed. */
final class InstrumentForm {
    /** Wide enough for the smallest fractional violin and a large double bass; a guard against slips, not a size table. */
    private static final double SHORTEST_BODY_MM = 150;

    private static final double LONGEST_BODY_MM = 1300;

    private InstrumentForm() {}

    static Instrument read(Typed typed, long id, long ownerId, int version) {
        InstrumentKind kind = typed.choice("kind", "The kind of instrument", InstrumentKind.class);
        String name = typed.required("name", "What the shop calls it", 120);
        return new Instrument(
                id,
                ownerId,
                kind == null ? InstrumentKind.OTHER : kind,
                name.isBlank() ? "?" : name,
                typed.text("size_words", "The size", 60),
                typed.text("made_words", "Where and when made", 300),
                typed.text("label_words", "The label", 600),
                typed.text("marks_words", "Marks and features", 1000),
                typed.decimal("body_length_mm", "The body length", "mm", SHORTEST_BODY_MM, LONGEST_BODY_MM),
                typed.text("story_told", "The story as told", 6000),
                typed.text("story_documented", "What papers show", 6000),
                typed.whole("unplayed_since", "The year since when it is unplayed", 1500, 2200),
                version);
    }

    static Map<String, String> typedOf(Instrument instrument) {
        Map<String, String> typed = new HashMap<>();
        typed.put("kind", instrument.kind().name());
        typed.put("name", instrument.name());
        typed.put("size_words", instrument.sizeWords());
        typed.put("made_words", instrument.madeWords());
        typed.put("label_words", instrument.labelWords());
        typed.put("marks_words", instrument.marksWords());
        typed.put("body_length_mm", Figures.typed(instrument.bodyLengthMm()));
        typed.put("story_told", instrument.storyTold());
        typed.put("story_documented", instrument.storyDocumented());
        typed.put(
                "unplayed_since",
                instrument.unplayedSince() == null
                        ? ""
                        : instrument.unplayedSince().toString());
        typed.put("version", Integer.toString(instrument.version()));
        return typed;
    }
}
