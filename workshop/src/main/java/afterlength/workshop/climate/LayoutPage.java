package afterlength.workshop.climate;

import afterlength.craft.air.LayoutGuess;
import afterlength.craft.air.LoggerReading;
import afterlength.craft.air.RejectedRows;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A logger file before it is taken in: its first lines, its layout to confirm, and what reading it so gave.
 *
 * @param tried what a trial with this layout read, or null before the first
 */
record LayoutPage(
        Frame frame,
        Typed typed,
        List<String> head,
        @Nullable LayoutGuess guess,
        @Nullable LoggerReading tried,
        String zone) {
    private static final int LINES_SHOWN = 18;
    private static final int FAULTS_SHOWN = 12;

    List<String> firstLines() {
        return head.subList(0, Math.min(head.size(), LINES_SHOWN));
    }

    String columns() {
        if (guess == null) {
            return "";
        }
        List<String> named = new ArrayList<>();
        for (int n = 0; n < guess.headings().size(); n++) {
            named.add((n + 1) + " " + guess.headings().get(n));
        }
        return String.join(" · ", named);
    }

    String answer(LoggerReading reading) {
        int lost = reading.rejectedCount();
        if (reading.record().size() == 0) {
            return "No row can be counted so. "
                    + (reading.notes().isEmpty() ? "" : reading.notes().get(0).text());
        }
        return Integer.toString(reading.record().size()) + " readings from "
                + Days.words(Instant.ofEpochSecond(reading.record().moment_s(0))) + " to "
                + Days.words(Instant.ofEpochSecond(
                        reading.record().moment_s(reading.record().size() - 1)))
                + (lost == 0
                        ? "; every row is counted."
                        : "; " + lost + (lost == 1 ? " row is" : " rows are") + " not counted.");
    }

    boolean canBeTaken() {
        return tried != null && !tried.broken() && tried.record().size() > 0;
    }

    List<String> faults(LoggerReading reading) {
        return reading.rejected().stream()
                .limit(FAULTS_SHOWN)
                .map(RejectedRows::text)
                .toList();
    }

    int faultsMore(LoggerReading reading) {
        return Math.max(0, reading.rejected().size() - FAULTS_SHOWN);
    }

    /** The first readings, as a person would read them. */
    List<String> first(LoggerReading reading) {
        List<String> rows = new ArrayList<>();
        for (int n = 0; n < Math.min(4, reading.record().size()); n++) {
            rows.add(Days.words(Instant.ofEpochSecond(reading.record().moment_s(n))) + ": "
                    + Figures.fixed(reading.record().temperature_C(n), 1) + " °C, "
                    + Figures.fixed(reading.record().humidity_pct(n), 1) + " % RH");
        }
        return rows;
    }
}
