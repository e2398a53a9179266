package afterlength.workshop.plan;

import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import afterlength.workshop.paper.SvgPen;
import afterlength.workshop.work.Step;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The sheet for the wall: who does what when today, what dries until when, cautions first, and the days ahead as a drawing. */
record DaySheet(
        ShopWork work,
        LocalDate day,
        List<String> notes,
        List<Hand> hands,
        List<PlannedLine> waits,
        List<String> cautions,
        String drawing) {

    /** One person's day. */
    record Hand(String name, List<PlannedLine> lines) {}

    static DaySheet of(CheckedPlan plan, ShopWork work, LocalDate day) {
        List<PlannedLine> today = plan.lines().stream()
                .filter(line -> line.place().hasHands() && isOn(line, day))
                .toList();
        List<Hand> hands = new ArrayList<>();
        for (String hand : work.hands()) {
            hands.add(new Hand(
                    hand,
                    today.stream()
                            .filter(line -> line.place().hand().equals(hand))
                            .toList()));
        }
        return new DaySheet(
                work,
                day,
                DayNotes.of(plan, work, day),
                hands,
                plan.lines().stream()
                        .filter(line -> line.place().hasWait() && isWaiting(line, day))
                        .toList(),
                cautions(today),
                SvgPen.forPaper(WeekDrawing.of(plan, day, work, WeekDrawing.PAPER_MM)));
    }

    private static boolean isOn(PlannedLine line, LocalDate day) {
        return line.day().equals(day)
                || (line.piece().begun() && Days.day(line.place().handsEnd()).equals(day));
    }

    private static boolean isWaiting(PlannedLine line, LocalDate day) {
        return !Days.day(line.place().handsEnd()).isAfter(day)
                && !Days.day(line.place().end()).isBefore(day);
    }

    private static List<String> cautions(List<PlannedLine> today) {
        TreeSet<String> all = new TreeSet<>();
        for (PlannedLine line : today) {
            Step step = line.piece().step();
            Cautions.of(step.needs(), step.name()).forEach(caution -> all.add(caution.text()));
        }
        return List.copyOf(all);
    }

    /** The first open day from this one on. */
    static LocalDate openDay(LocalDate from, BenchCalendar calendar) {
        LocalDate day = from;
        for (int n = 0; n < 7 && !calendar.isOpen(day); n++) {
            day = day.plusDays(1);
        }
        return calendar.isOpen(day) ? day : from.with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
    }

    byte[] pdf() {
        return PaperPdf.of(new PaperDocument(
                Days.weekday(day),
                "en",
                work.settings().letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(work.settings().shopName(), Days.words(Days.day(work.now()))),
                Templates.text(this),
                Map.of()));
    }
}
