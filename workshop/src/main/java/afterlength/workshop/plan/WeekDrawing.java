package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Hatching;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;
import afterlength.workshop.work.HouseVisit;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The week as one drawing: a row for each instrument, a column for each day with its night as a narrow gap. Hands are solid with the letters
 * of whose they are, waits are hatched, a promised day is a flag at its end. Pattern, letters and shape tell everything; colour only helps.
 */
final class WeekDrawing {
    /** As broad as the page of a screen. */
    static final double SCREEN_MM = 250;

    /** As broad as the text of a paper, A4 or Letter. */
    static final double PAPER_MM = 166;

    private static final double LEFT_MM = 46;
    private static final double ROW_MM = 12;
    private static final double BAR_MM = 5.6;
    private static final double LETTER_MM = 3.1;
    private static final double SMALL_MM = 2.5;
    private static final double HEAD_MM = 9;

    /** Letters nearer to each other than this would touch. */
    private static final double LETTERS_MM = 4.2;

    /** A bar narrower than this would not be seen. */
    private static final double LEAST_MM = 0.9;

    private final CheckedPlan plan;
    private final WeekScale scale;
    private final BenchCalendar calendar;
    private final Instant now;
    private final List<HouseVisit> rows;
    private final double top_mm;
    private final Sketch sketch = new Sketch();
    private final double width_mm;
    private String lettersBefore = "";
    private double lettersMiddle_mm;
    private double lettersBottom_mm = -1;

    private WeekDrawing(CheckedPlan plan, LocalDate first, ShopWork work, double width_mm) {
        this.plan = plan;
        this.calendar = work.calendar();
        this.now = work.now();
        this.width_mm = width_mm;
        WeekHours hours = work.rules().hours();
        this.scale = new WeekScale(first, 7, calendar, opens(hours), closes(hours), LEFT_MM, width_mm - LEFT_MM);
        this.rows = plan.bench().visits();
        this.top_mm = rows.size() * ROW_MM;
    }

    static Drawing of(CheckedPlan plan, LocalDate first, ShopWork work, double width_mm) {
        return new WeekDrawing(plan, first, work, width_mm).draw();
    }

    private static LocalTime opens(WeekHours hours) {
        return hours.days().values().stream()
                .flatMap(List::stream)
                .map(Stretch::from)
                .min(LocalTime::compareTo)
                .orElse(LocalTime.of(9, 0));
    }

    private static LocalTime closes(WeekHours hours) {
        return hours.days().values().stream()
                .flatMap(List::stream)
                .map(Stretch::to)
                .max(LocalTime::compareTo)
                .orElse(LocalTime.of(18, 0));
    }

    private Drawing draw() {
        days();
        for (int row = 0; row < rows.size(); row++) {
            row(row);
        }
        today();
        return sketch.drawing("Seven days from " + Days.words(scale.day(0)), description());
    }

    private String description() {
        long hands = plan.lines().stream()
                .filter(this::isSeen)
                .filter(line -> line.place().hasHands())
                .count();
        return "A row for each of " + rows.size()
                + " instruments; solid bars are hands with the letters of whose, hatched bars are waits,"
                + " flags are promised days. " + hands
                + " pieces of hands-on work; all of them stand in the list beneath.";
    }

    private void days() {
        for (int n = 0; n < scale.days(); n++) {
            double left = scale.dayLeft_mm(n);
            double right = scale.dayRight_mm(n);
            if (!scale.isOpen(n)) {
                sketch.area(box(left, right, 0, top_mm), null, Ink.BAND);
            }
            sketch.line(new Point(left, 0), new Point(left, top_mm), Stroke.of(Ink.FAINT, 0.15));
            if (scale.isOpen(n)) {
                sketch.line(new Point(right, 0), new Point(right, top_mm), Stroke.dashed(Ink.FAINT, 0.15, 0.8, 0.8));
            }
            DayOfWeek day = scale.day(n).getDayOfWeek();
            sketch.words(
                    scale.isOpen(n) ? PlanWords.day(scale.day(n)) : day.getDisplayName(TextStyle.NARROW, Locale.UK),
                    new Point((left + right) / 2, top_mm + 2.6),
                    LETTER_MM,
                    Anchor.MIDDLE,
                    Face.SANS,
                    Ink.INK);
        }
    }

    private void row(int row) {
        double bottom = top_mm - (row + 1) * ROW_MM;
        HouseVisit visit = rows.get(row);
        sketch.line(new Point(0, bottom), new Point(width_mm, bottom), Stroke.of(Ink.FAINT, 0.15));
        names(visit, bottom);
        for (PlannedLine line : plan.lines()) {
            if (line.visit().equals(visit) && isSeen(line)) {
                wait(line, bottom + 2.6);
                hands(line, bottom + 2.6);
            }
        }
        flag(visit, bottom);
    }

    private void names(HouseVisit visit, double bottom_mm) {
        String name = visit.instrument();
        int space = name.length() <= 26 ? name.length() : name.lastIndexOf(' ', 26);
        int cut = space <= 0 ? Math.min(26, name.length()) : space;
        String rest = name.substring(cut).strip();
        double upper = bottom_mm + (rest.isEmpty() ? 4.2 : 6);
        sketch.words(name.substring(0, cut), new Point(0, upper), LETTER_MM, Anchor.START, Face.SERIF, Ink.INK);
        if (!rest.isEmpty()) {
            String short_ = rest.length() <= 26 ? rest : rest.substring(0, 25) + "…";
            sketch.words(short_, new Point(0, bottom_mm + 2.2), LETTER_MM, Anchor.START, Face.SERIF, Ink.INK);
        }
    }

    private boolean isSeen(PlannedLine line) {
        return line.place().end().isAfter(scale.from()) && line.place().start().isBefore(scale.to());
    }

    private void wait(PlannedLine line, double bottom_mm) {
        double from = scale.x_mm(line.place().handsEnd());
        double to = scale.x_mm(line.place().end());
        if (!line.place().hasWait() || to - from < 0.2) {
            return;
        }
        List<Point> box = box(from, to, bottom_mm, bottom_mm + BAR_MM);
        sketch.area(box, Stroke.of(Ink.INK, 0.18), Ink.PAPER);
        sketch.putAll(Hatching.of(box, 1.3, 45, Stroke.of(Ink.FAINT, 0.2)));
    }

    private void hands(PlannedLine line, double bottom_mm) {
        if (!line.place().hasHands() || !line.place().handsEnd().isAfter(scale.from())) {
            return;
        }
        double from = scale.x_mm(line.place().start());
        double to = Math.max(from + LEAST_MM, scale.x_mm(line.place().handsEnd()));
        sketch.area(box(from, to, bottom_mm, bottom_mm + BAR_MM), Stroke.of(Ink.INK, 0.18), Ink.ACCENT);
        letters(PlanWords.initials(line.place().hand()), (from + to) / 2, bottom_mm);
    }

    /** Not twice over bars that touch; of two hands side by side the second stands beneath. */
    private void letters(String whose, double middle_mm, double bottom_mm) {
        boolean close = bottom_mm == lettersBottom_mm && middle_mm - lettersMiddle_mm < LETTERS_MM;
        if (close && whose.equals(lettersBefore)) {
            return;
        }
        double y = close ? bottom_mm - 2.2 : bottom_mm + BAR_MM + 0.5;
        sketch.words(whose, new Point(middle_mm, y), SMALL_MM, Anchor.MIDDLE, Face.SANS, Ink.INK);
        lettersBefore = whose;
        lettersMiddle_mm = middle_mm;
        lettersBottom_mm = bottom_mm;
    }

    private void flag(HouseVisit visit, double bottom_mm) {
        LocalDate promised = visit.promisedOn();
        if (promised == null
                || promised.isBefore(scale.day(0))
                || !promised.isBefore(scale.day(scale.days() - 1).plusDays(1))) {
            return;
        }
        double x = scale.x_mm(calendar.closingAt(promised));
        double top = bottom_mm + ROW_MM - 0.6;
        sketch.line(new Point(x, bottom_mm), new Point(x, top), Stroke.of(Ink.INK, 0.5));
        sketch.area(List.of(new Point(x, top), new Point(x - 4.5, top - 1.5), new Point(x, top - 3)), null, Ink.INK);
    }

    private void today() {
        if (now.isBefore(scale.from()) || !now.isBefore(scale.to())) {
            return;
        }
        double x = scale.x_mm(now);
        sketch.line(new Point(x, -1.5), new Point(x, top_mm), Stroke.dashed(Ink.ACCENT, 0.35, 1.6, 0.9));
        sketch.wordsOnPaper(
                new Words("now", new Point(x, -HEAD_MM / 2), SMALL_MM, Anchor.MIDDLE, 0, Face.SANS, Ink.ACCENT));
    }

    private static List<Point> box(double left_mm, double right_mm, double bottom_mm, double top_mm) {
        List<Point> box = new ArrayList<>();
        box.add(new Point(left_mm, bottom_mm));
        box.add(new Point(right_mm, bottom_mm));
        box.add(new Point(right_mm, top_mm));
        box.add(new Point(left_mm, top_mm));
        return box;
    }
}
