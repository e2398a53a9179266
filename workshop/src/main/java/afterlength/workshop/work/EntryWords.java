package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** How a diary entry is told. */
final class EntryWords {
    /** Needs that leave something on or in the instrument, so that its record wants a material. */
    private static final Pattern LEAVES_MATERIAL = Pattern.compile(
            "glue|varnish|\\bfill\\b|colours|oil|spirit|compound|wood\\b|strip|chalk", Pattern.CASE_INSENSITIVE);

    private EntryWords() {}

    /** Warm, glue, clamp: done. */
    static String what(DiaryEntry entry) {
        return switch (entry.writing().what()) {
            case STARTED -> "“" + entry.stepName() + "” started";
            case DONE -> "“" + entry.stepName() + "” done";
            case NOT_DRY -> "“" + entry.stepName() + "” not ready yet, " + moreHours(entry) + " more";
            case NOTE -> entry.stepName().isEmpty() ? "Note" : "Note on “" + entry.stepName() + "”";
        };
    }

    /** Minutes, hand and marks, with commas between. */
    static String about(DiaryEntry entry) {
        List<String> parts = new ArrayList<>();
        Integer minutes = entry.writing().minutes();
        if (minutes != null) {
            parts.add(Figures.duration(minutes) + " hands-on");
        }
        if (!entry.writing().hand().isEmpty()) {
            parts.add("hand: " + entry.writing().hand());
        }
        if (entry.late()) {
            parts.add("written late, on " + Days.words(entry.firstWrittenAt()));
        }
        if (entry.corrected()) {
            parts.add("corrected on " + Days.words(entry.writtenAt()));
        }
        return String.join(", ", parts);
    }

    static String material(DiaryEntry entry) {
        Writing writing = entry.writing();
        return writing.reversibleWith().isEmpty()
                ? writing.material()
                : writing.material() + " (undone with " + writing.reversibleWith() + ")";
    }

    /** Whether a step usually leaves a material that the diary should name. */
    static boolean wantsMaterial(Step step) {
        return LEAVES_MATERIAL.matcher(step.needs()).find();
    }

    private static String moreHours(DiaryEntry entry) {
        Double hours = entry.writing().moreHours();
        return hours == null ? "" : StepWords.hours(hours);
    }
}
