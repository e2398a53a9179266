package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a finding from what was typed. Only part, kind and hand have to be there; what else is missing leaves it a draft. */
final class FindingForm {
    /** From the width of a hair to a double bass with its scroll; a guard against slips. */
    private static final double SMALLEST_MM = 0.05;

    private static final double LARGEST_MM = 2500;

    private FindingForm() {}

    static Finding read(Typed typed, long visitId, Instant now) {
        return read(typed, visitId, null, now, now);
    }

    /** A correction: seen when it was seen, written now. */
    static Finding read(Typed typed, Finding before, Instant now) {
        return read(typed, before.visitId(), before.id(), before.seenAt(), now);
    }

    private static Finding read(Typed typed, long visitId, @Nullable Long replaces, Instant seenAt, Instant now) {
        Double size_mm = typed.decimal("size_mm", "The size", "mm", SMALLEST_MM, LARGEST_MM);
        Double plusMinus_mm = typed.decimal("size_plus_minus_mm", "The ± of the size", "mm", 0.01, LARGEST_MM);
        String reason = typed.text("size_reason", "The reason why there is no size", 200);
        checkTogether(typed, reason);
        boolean sized = size_mm != null && plusMinus_mm != null;
        return new Finding(
                0,
                visitId,
                replaces,
                false,
                orMark(typed.required("part", "The part", 60)),
                orMark(typed.required("kind", "The kind", 120)),
                typed.text("place", "The place", 300),
                sized ? size_mm : null,
                sized ? plusMinus_mm : null,
                reason,
                choice(typed, "age", "Whether it is fresh or old", FindingAge.class, FindingAge.UNKNOWN),
                choice(typed, "hinders_playing", "Whether it hinders playing", Answer.class, Answer.UNKNOWN),
                choice(typed, "gets_worse", "Whether it gets worse", Answer.class, Answer.UNKNOWN),
                typed.text("observation", "The observation", 3000),
                typed.text("interpretation", "The interpretation", 3000),
                seenAt,
                typed.required("hand", "The hand", 60),
                now);
    }

    private static void checkTogether(Typed typed, String reason) {
        boolean size = !typed.raw("size_mm").isBlank();
        boolean plusMinus = !typed.raw("size_plus_minus_mm").isBlank();
        if (size && !plusMinus) {
            typed.note(
                    "size_plus_minus_mm",
                    "The size has no ±. Write how far it may be off, such as 0.5 for a steel rule or 2 for an estimate.");
        }
        if (!size && plusMinus) {
            typed.note("size_mm", "There is a ± without a size. Write the size, or take the ± out.");
        }
        if (size && !reason.isEmpty()) {
            typed.note("size_reason", "There is a size, and a reason why there is none. Keep one of the two.");
        }
    }

    private static <E extends Enum<E>> E choice(Typed typed, String name, String label, Class<E> kind, E otherwise) {
        E chosen = typed.choice(name, label, kind);
        return chosen == null ? otherwise : chosen;
    }

    /** A record never lacks its part; where a problem was noted it is not used. */
    private static String orMark(String words) {
        return words.isBlank() ? "?" : words;
    }

    static Typed fresh(String hand) {
        return Typed.known(Map.of(
                "age", FindingAge.UNKNOWN.name(),
                "hinders_playing", Answer.UNKNOWN.name(),
                "gets_worse", Answer.UNKNOWN.name(),
                "hand", hand));
    }

    static Typed known(Finding finding, List<Long> photographs) {
        Map<String, List<String>> typed = new HashMap<>();
        put(typed, "part", finding.part());
        put(typed, "kind", finding.kind());
        put(typed, "place", finding.place());
        put(typed, "size_mm", Figures.typed(finding.sizeMm()));
        put(typed, "size_plus_minus_mm", Figures.typed(finding.sizePlusMinusMm()));
        put(typed, "size_reason", finding.sizeReason());
        put(typed, "age", finding.age().name());
        put(typed, "hinders_playing", finding.hindersPlaying().name());
        put(typed, "gets_worse", finding.getsWorse().name());
        put(typed, "observation", finding.observation());
        put(typed, "interpretation", finding.interpretation());
        put(typed, "hand", finding.hand());
        typed.put(
                "photograph", photographs.stream().map(id -> Long.toString(id)).toList());
        return Typed.knownAll(typed);
    }

    private static void put(Map<String, List<String>> typed, String name, String value) {
        typed.put(name, List.of(value));
    }

    /** The ticked photographs, as far as they belong to the visit. */
    static List<Long> photographs(Typed typed, List<Photograph> ofVisit) {
        return ofVisit.stream()
                .map(Photograph::id)
                .filter(id -> typed.ticked("photograph", Long.toString(id)))
                .toList();
    }
}
