package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How a plan is said. */
final class PlanWords {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);

    private PlanWords() {}

    /** Thu 3 Dec. */
    static String day(LocalDate day) {
        return SHORT.format(day);
    }

    /** Thu 3 Dec, 10:15. */
    static String moment(Instant at) {
        return day(Days.day(at)) + ", " + Days.clock(at);
    }

    /** As on that day's sheet: 10:15, or Thu 3 Dec, 10:15. Never broken over two lines. */
    static String momentOn(LocalDate sheet, Instant at) {
        return whole(Days.day(at).equals(sheet) ? Days.clock(at) : moment(at));
    }

    /** Never broken over two lines. */
    static String whole(String words) {
        return words.replace(' ', '\u00A0');
    }

    static String promised(@Nullable LocalDate day) {
        return day == null ? "nothing promised" : day(day);
    }

    /** 10:15 – 10:45. */
    static String hours(PlacedPiece place) {
        String from = Days.clock(place.start());
        return place.hasHands() ? from + " – " + Days.clock(place.handsEnd()) : from;
    }

    static String until(PlacedPiece place) {
        return place.hasWait() ? "waits until " + moment(place.end()) : "";
    }

    static String numbered(int count, String one, String many) {
        return count == 1 ? "one " + one : count + " " + many;
    }

    /** What a change does, as the sentence in large type. */
    static String sentence(PlanChange change) {
        List<PlanChange.VisitLine> late = change.late();
        if (late.isEmpty()) {
            return "Everything is ready as promised.";
        }
        return late.stream()
                        .map(line -> line.visit().instrument() + " on " + day(line.day()) + " instead of "
                                + promised(line.visit().promisedOn()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    static String moves(PlanChange change) {
        int count = change.moves().size();
        return count == 0
                ? "No step changes its day."
                : numbered(count, "step changes its day", "steps change their day") + ":";
    }

    /** Ines Marbach: IM, as it stands on the drawing. */
    static String initials(String hand) {
        return Pattern.compile("\\s+")
                .splitAsStream(hand.strip())
                .map(word -> word.substring(0, Math.min(1, word.length())))
                .limit(2)
                .collect(Collectors.joining());
    }
}
