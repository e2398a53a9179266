package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads a diary entry from what was typed. A time is typed to the minute; while it still shows the minute the form was filled with,
 * the entry keeps the second it had.
 */
final class DiaryForm {
    /** Shortest and longest further wait that can be asked for. */
    private static final double SHORTEST_MORE_H = 0.25;

    private static final double LONGEST_MORE_H = 2000;
    private static final int LONGEST_MIN = 24 * 60;

    private final Typed typed;
    private final Visit visit;
    private final List<Material> shelf;
    private final Instant now;

    private DiaryForm(Typed typed, Visit visit, List<Material> shelf, Instant now) {
        this.typed = typed;
        this.visit = visit;
        this.shelf = shelf;
        this.now = now;
    }

    /** The entry, or null when a problem was noted. */
    static @Nullable Writing read(
            Typed typed, Visit visit, @Nullable Long stepId, DiaryEvent what, List<Material> shelf, Instant now) {
        return new DiaryForm(typed, visit, shelf, now).read(stepId, what);
    }

    private @Nullable Writing read(@Nullable Long stepId, DiaryEvent what) {
        Instant at = at();
        Integer minutes = what == DiaryEvent.DONE || what == DiaryEvent.NOTE
                ? typed.whole("minutes", "The hands-on minutes", 0, LONGEST_MIN)
                : null;
        Double more = what == DiaryEvent.NOT_DRY ? moreHours() : null;
        String remark = what == DiaryEvent.NOTE
                ? typed.required("remark", "The note", 4000)
                : typed.text("remark", "The remark", 4000);
        String hand = typed.text("hand", "The hand", 60);
        Material chosen = chosen();
        String material = material(chosen);
        String undone = typed.text("reversible_with", "What undoes it", 300);
        if (!typed.sound() || at == null) {
            return null;
        }
        String undoneWith = undone.isEmpty() && chosen != null ? chosen.reversibleWith() : undone;
        return new Writing(visit.id(), stepId, what, at, minutes, more, hand, material, undoneWith, remark);
    }

    private @Nullable Instant at() {
        String text = typed.raw("at").strip();
        try {
            Instant at = text.equals(typed.raw("at_filled"))
                    ? Instant.parse(typed.raw("at_second"))
                    : Days.instant(LocalDateTime.parse(text));
            check(at);
            return at;
        } catch (DateTimeParseException e) {
            typed.note(
                    "at",
                    "The time is “" + text + "”, which is no time. Write day and time, such as 2026-03-14T09:30.");
            return null;
        }
    }

    private void check(Instant at) {
        if (at.isAfter(now)) {
            typed.note(
                    "at",
                    "The time " + Days.words(at) + " lies ahead; the diary takes what has been done, up to now, "
                            + Days.words(now) + ".");
        }
        if (Days.day(at).isBefore(visit.receivedOn())) {
            typed.note(
                    "at",
                    "The time " + Days.words(at) + " lies before the receipt on " + Days.words(visit.receivedOn())
                            + "; choose that day or a later one.");
        }
    }

    private @Nullable Double moreHours() {
        double hours = typed.requiredDecimal("more_hours", "The further wait", "h", SHORTEST_MORE_H, LONGEST_MORE_H);
        return Double.isNaN(hours) ? null : hours;
    }

    private @Nullable Material chosen() {
        String id = typed.raw("material_id");
        return shelf.stream()
                .filter(material -> id.equals(Long.toString(material.id())))
                .findFirst()
                .orElse(null);
    }

    /** The chosen one, with what was written beside it. */
    private String material(@Nullable Material chosen) {
        String own = typed.text("material", "The material", 300);
        if (chosen == null) {
            return own;
        }
        return own.isEmpty() ? chosen.words() : chosen.words() + "; " + own;
    }

    static Map<String, String> fresh(Instant now, String hand) {
        Map<String, String> typed = new HashMap<>();
        typed.put("at", minute(now));
        typed.put("at_filled", minute(now));
        typed.put("at_second", now.truncatedTo(ChronoUnit.SECONDS).toString());
        typed.put("hand", hand);
        return typed;
    }

    static Map<String, String> typedOf(DiaryEntry entry) {
        Writing writing = entry.writing();
        Map<String, String> typed = fresh(writing.at(), writing.hand());
        typed.put("minutes", writing.minutes() == null ? "" : writing.minutes().toString());
        typed.put("more_hours", Figures.typed(writing.moreHours()));
        typed.put("material", writing.material());
        typed.put("reversible_with", writing.reversibleWith());
        typed.put("remark", writing.remark());
        return typed;
    }

    private static String minute(Instant at) {
        return Days.local(at).truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
