package afterlength.workshop.retouch;

import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.DrawnMark;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads which two marks show the same line, and has both read. */
final class MendedLineForm {
    private final Typed typed;
    private final List<DrawnMark> marks;
    private final LineDesk desk;

    private MendedLineForm(Typed typed, List<DrawnMark> marks, LineDesk desk) {
        this.typed = typed;
        this.marks = marks;
        this.desk = desk;
    }

    /** Null when a problem was noted. */
    static @Nullable MendedLine read(Typed typed, long visitId, List<DrawnMark> marks, LineDesk desk, Instant now) {
        return new MendedLineForm(typed, marks, desk).read(visitId, now);
    }

    private @Nullable MendedLine read(long visitId, Instant now) {
        String place = typed.required("place", "Which line", 200);
        DrawnMark before = chosen("before", "The line before", true);
        DrawnMark after = chosen("after", "The line afterwards", true);
        DrawnMark beforeUntouched = untouched("before_untouched", before);
        DrawnMark afterUntouched = untouched("after_untouched", after);
        Double length_mm = typed.decimal("length_mm", "The length of the line", "mm", 2, 500);
        String hand = typed.required("hand", "Whose hands", 60);
        if (before != null && after != null && before.id() == after.id()) {
            typed.note("after", "Both are the same mark; choose the mark on a photograph taken after the work.");
        }
        if (!typed.sound() || before == null || after == null) {
            return null;
        }
        LineSight first = sight("before", before, length_mm, beforeUntouched);
        LineSight second = sight("after", after, length_mm, afterUntouched);
        return first == null || second == null
                ? null
                : new MendedLine(0, visitId, null, false, place, first, second, now, hand);
    }

    private @Nullable LineSight sight(
            String name, DrawnMark mark, @Nullable Double length_mm, @Nullable DrawnMark untouched) {
        LineAnswer answer = desk.read(mark, length_mm, untouched);
        if (answer instanceof LineAnswer.Read read) {
            return read.sight();
        }
        typed.note(name, ((LineAnswer.Refused) answer).reason());
        return null;
    }

    private @Nullable DrawnMark untouched(String name, @Nullable DrawnMark line) {
        DrawnMark chosen = chosen(name, "The untouched place", false);
        if (chosen != null && line != null && !Objects.equals(chosen.photographId(), line.photographId())) {
            typed.note(name, "The untouched place must be marked on the same photograph as the line.");
        }
        return chosen;
    }

    private @Nullable DrawnMark chosen(String name, String label, boolean needed) {
        String text = typed.raw(name).strip();
        DrawnMark mark = marks.stream()
                .filter(one -> Long.toString(one.id()).equals(text))
                .findFirst()
                .orElse(null);
        if (mark == null && (needed || !text.isEmpty())) {
            typed.note(name, label + " is not chosen; choose one of the list.");
        }
        return mark;
    }
}
