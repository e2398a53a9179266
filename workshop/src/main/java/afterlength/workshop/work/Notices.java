package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads from a page's address what was just done, and says it with a way back. */
final class Notices {
    private final DiaryStore diary;
    private final StepStore steps;
    private final Clock clock;

    Notices(DiaryStore diary, StepStore steps, Clock clock) {
        this.diary = diary;
        this.steps = steps;
        this.clock = clock;
    }

    Optional<Notice> read(Context context) {
        OptionalLong entry = number(context, "entry");
        if (entry.isPresent()) {
            return diary.find(entry.getAsLong()).map(this::about);
        }
        OptionalLong already = number(context, "already");
        if (already.isPresent()) {
            return Optional.of(already(steps.get(already.getAsLong())));
        }
        OptionalLong dropped = number(context, "dropped");
        return dropped.isPresent() ? Optional.of(dropped(steps.get(dropped.getAsLong()))) : Optional.empty();
    }

    private Notice about(DiaryEntry entry) {
        String at = Days.near(entry.writing().at(), clock.instant());
        if (entry.withdrawn()) {
            return new Notice(
                    "Taken out of the diary: " + EntryWords.what(entry) + ", " + at + ".",
                    "/diary/" + entry.id() + "/put-in-again",
                    "Put it in again",
                    null);
        }
        return new Notice(
                "In the diary: " + EntryWords.what(entry) + ", " + at + "." + minutes(entry) + material(entry),
                "/diary/" + entry.id() + "/take-out",
                "Take it back",
                "/diary/" + entry.id() + "/correct");
    }

    private static String minutes(DiaryEntry entry) {
        if (entry.writing().what() != DiaryEvent.DONE) {
            return "";
        }
        Integer minutes = entry.writing().minutes();
        return minutes == null
                ? " The minutes could not be counted; write them if you know them."
                : " " + Figures.duration(minutes) + " hands-on.";
    }

    private String material(DiaryEntry entry) {
        Long step = entry.writing().stepId();
        boolean missing = entry.writing().what() == DiaryEvent.DONE
                && entry.writing().material().isEmpty()
                && step != null
                && EntryWords.wantsMaterial(steps.get(step));
        return missing ? " No material is named yet." : "";
    }

    private Notice already(Step step) {
        Instant now = clock.instant();
        StepStatus status = StepStatus.of(step, diary.listNow(step.visitId()), now);
        return Notice.plain(
                "Nothing new was written: “" + step.name() + "” is already " + StepWords.status(status, now) + ".");
    }

    private static Notice dropped(Step step) {
        return step.dropped()
                ? new Notice(
                        "Left out: “" + step.name() + "”.", "/steps/" + step.id() + "/take-back", "Take it back", null)
                : Notice.plain(
                        "“" + step.name() + "” stays, since the diary tells of it. Take its entries out first, or "
                                + "write what happened instead.");
    }

    private static OptionalLong number(Context context, String name) {
        String text = context.queryParam(name);
        return text != null && text.matches("\\d{1,18}") ? OptionalLong.of(Long.parseLong(text)) : OptionalLong.empty();
    }
}
