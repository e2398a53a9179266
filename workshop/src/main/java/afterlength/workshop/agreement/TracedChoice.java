package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.TracedMark;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Takes marks of a photograph over into the fields of a study. What is taken counts from one card: marks of two photographs have no
 * axes in common.
 */
final class TracedChoice {
    /** The fields that can be filled from a mark; the choice for each has its name and {@code _mark}. */
    static final List<String> FIELDS = List.of("outline", "crack", "bar", "post", "lining");

    private TracedChoice() {}

    /** The form with the points of the chosen marks in their fields, or the same form with a problem noted. */
    static Typed taken(Typed typed, List<TracedMark> marks) {
        Map<String, TracedMark> chosen = new LinkedHashMap<>();
        for (String field : FIELDS) {
            find(typed.raw(field + "_mark"), marks).ifPresent(mark -> chosen.put(field, mark));
        }
        if (chosen.isEmpty()) {
            typed.note("outline_mark", "No mark is chosen. Choose the traced hole and the traced crack.");
            return typed;
        }
        List<Photograph> photographs =
                chosen.values().stream().map(TracedMark::photograph).distinct().toList();
        if (photographs.size() > 1) {
            typed.note(
                    "outline_mark",
                    "The chosen marks lie on different photographs ("
                            + photographs.get(0).title() + "; "
                            + photographs.get(1).title()
                            + "), and each counts from its own card. Trace hole and crack in one photograph.");
            return typed;
        }
        long photograph = photographs.get(0).id();
        boolean both = chosen.containsKey("outline") && chosen.containsKey("crack");
        if (!both && !typed.raw("photograph").equals(Long.toString(photograph))) {
            typed.note(
                    "outline_mark",
                    "Hole and crack must count from the same card. Choose both from one photograph, then whatever else is"
                            + " traced there.");
            return typed;
        }
        return typed.changed(fields(chosen, photograph));
    }

    private static Optional<TracedMark> find(String id, List<TracedMark> marks) {
        return marks.stream()
                .filter(mark -> Long.toString(mark.id()).equals(id))
                .findFirst();
    }

    private static Map<String, String> fields(Map<String, TracedMark> chosen, long photograph) {
        Map<String, String> fields = new TreeMap<>();
        chosen.forEach((field, mark) -> fields.put(field, TracedPoints.typed(mark.places())));
        fields.put("photograph", Long.toString(photograph));
        TracedMark hole = chosen.get("outline");
        if (hole != null) {
            fields.put("photograph_height_mm", Figures.typed(hole.height_mm()));
        }
        return fields;
    }
}
