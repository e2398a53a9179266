package afterlength.workshop.climate;

import afterlength.craft.air.ClimateStudy;
import afterlength.craft.air.MoistureStep;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * The record over time in two panels: relative humidity with the band of 40 to 60 %, below it the moisture wood would settle at
 * (thin) and that of the plate (strong). Lines break where nothing was read; steps that matter are marked by a bar with their
 * change. Readings are drawn as means of short spans, so that a year stays one line.
 */
final class ClimateChart {
    private static final double WIDTH_MM = 176;
    private static final double LEFT_MM = 16;
    private static final double AIR_BOTTOM_MM = 62;
    private static final double AIR_HEIGHT_MM = 46;
    private static final double WOOD_BOTTOM_MM = 8;
    private static final double WOOD_HEIGHT_MM = 42;
    private static final double LETTER_MM = 2.9;
    private static final int SPANS = 420;

    private final ClimateStudy study;
    private final Sketch sketch = new Sketch();
    private final long from_s;
    private final long to_s;
    private final double woodLeast_pct;
    private final double woodMost_pct;

    private ClimateChart(ClimateStudy study) {
        this.study = study;
        var record = study.history().record();
        from_s = record.moment_s(0);
        to_s = Math.max(from_s + 3600, record.moment_s(record.size() - 1));
        double least = study.equilibrium_pct().least();
        double most = study.equilibrium_pct().most();
        woodLeast_pct = Double.isNaN(least) ? 5 : Math.floor(least - 0.5);
        woodMost_pct = Double.isNaN(most) ? 15 : Math.ceil(most + 0.5);
    }

    static Drawing of(ClimateStudy study, String place) {
        return new ClimateChart(study).draw(place);
    }

    private Drawing draw(String place) {
        airPanel();
        woodPanel();
        days();
        study.steps().forEach(this::step);
        return sketch.drawing("The air of " + place + " over time", description());
    }

    private String description() {
        return "Relative humidity from " + Figures.fixed(study.humidity_pct().least(), 0) + " to "
                + Figures.fixed(study.humidity_pct().most(), 0) + " %, mean "
                + Figures.fixed(study.humidity_pct().mean(), 0)
                + " %; steps of plate moisture that matter: " + study.steps().size();
    }

    private void airPanel() {
        sketch.area(List.of(air(from_s, 40), air(to_s, 40), air(to_s, 60), air(from_s, 60)), null, Ink.BAND);
        for (int pct = 20; pct <= 80; pct += 20) {
            rule(air(from_s, pct), air(to_s, pct), pct + (pct == 80 ? " % RH" : ""));
        }
        lines(study.history().record()::humidity_pct, this::air, Stroke.of(Ink.INK, 0.35));
        sketch.words(
                "the band is 40 to 60 %, as it should be",
                air(from_s, 12), LETTER_MM, Anchor.START, Face.SERIF_ITALIC, Ink.INK);
    }

    private void woodPanel() {
        for (int pct = (int) woodLeast_pct; pct <= woodMost_pct; pct += woodMost_pct - woodLeast_pct > 7 ? 2 : 1) {
            rule(wood(from_s, pct), wood(to_s, pct), pct + " %");
        }
        lines(study.history()::equilibrium_pct, this::wood, Stroke.of(Ink.FAINT, 0.25));
        lines(study.history()::plate_pct, this::wood, Stroke.of(Ink.ACCENT, 0.7));
        sketch.words(
                "moisture of the plate (strong), where wood would settle (thin), ±0.5 %",
                new Point(LEFT_MM, WOOD_BOTTOM_MM + WOOD_HEIGHT_MM + 1.6),
                LETTER_MM,
                Anchor.START,
                Face.SERIF_ITALIC,
                Ink.INK);
    }

    private void rule(Point from, Point to, String words) {
        sketch.line(from, to, Stroke.of(Ink.FAINT, 0.12));
        sketch.words(words, from.moved(-1.5, -1.1), LETTER_MM, Anchor.END, Face.SANS, Ink.INK);
    }

    private interface Place {
        Point at(long moment_s, double value);
    }

    /** Means over short spans, a new line behind every gap. */
    private void lines(IntToDoubleFunction value, Place place, Stroke stroke) {
        List<Point> line = new ArrayList<>();
        var record = study.history().record();
        double span_s = Math.max((double) (to_s - from_s) / SPANS, (double) record.usualInterval_s());
        int n = 0;
        long before_s = from_s;
        while (n < record.size()) {
            long start_s = record.moment_s(n);
            double sum = 0;
            int count = 0;
            while (n < record.size() && record.moment_s(n) < start_s + span_s) {
                double one = value.applyAsDouble(n);
                sum += Double.isNaN(one) ? 0 : one;
                count += Double.isNaN(one) ? 0 : 1;
                n++;
            }
            if (count == 0 || isGap(before_s, start_s)) {
                put(line, stroke);
            }
            if (count > 0) {
                line.add(place.at((start_s + record.moment_s(n - 1)) / 2, sum / count));
            }
            before_s = start_s;
        }
        put(line, stroke);
    }

    private boolean isGap(long from, long to) {
        return study.history().gaps().stream().anyMatch(gap -> gap.from_s() >= from && gap.to_s() <= to);
    }

    private void put(List<Point> line, Stroke stroke) {
        if (line.size() > 1) {
            sketch.curve(List.copyOf(line), stroke);
        }
        line.clear();
    }

    private void days() {
        long days = Math.max(1, Duration.ofSeconds(to_s - from_s).toDays());
        long every = Math.max(1, (days + 4) / 5);
        Instant day =
                Days.instant(Days.day(Instant.ofEpochSecond(from_s)).plusDays(1).atStartOfDay());
        while (day.getEpochSecond() < to_s) {
            Point foot = new Point(x_mm(day.getEpochSecond()), WOOD_BOTTOM_MM);
            sketch.line(foot, foot.moved(0, -1.2), Stroke.of(Ink.INK, 0.2));
            sketch.words(Days.words(Days.day(day)), foot.moved(0, -5), LETTER_MM, Anchor.MIDDLE, Face.SANS, Ink.INK);
            day = Days.instant(Days.day(day).plusDays(every).atStartOfDay());
        }
    }

    private void step(MoistureStep step) {
        double y_mm = WOOD_BOTTOM_MM + 1.6;
        Point from = new Point(x_mm(step.from_s()), y_mm);
        Point to = new Point(Math.max(from.x_mm() + 1, x_mm(step.to_s())), y_mm);
        sketch.line(from, to, Stroke.of(Ink.ACCENT, 1.2));
        sketch.words(
                (step.change_pct() > 0 ? "+" : "") + Figures.fixed(step.change_pct(), 1) + " %",
                from.moved((to.x_mm() - from.x_mm()) / 2, 1.6),
                LETTER_MM,
                Anchor.MIDDLE,
                Face.SANS_STRONG,
                Ink.ACCENT);
    }

    private double x_mm(long moment_s) {
        return LEFT_MM + (WIDTH_MM - LEFT_MM) * (moment_s - from_s) / (to_s - from_s);
    }

    private Point air(long moment_s, double rh_pct) {
        double part = Math.max(0, Math.min(1, (rh_pct - 10) / 80));
        return new Point(x_mm(moment_s), AIR_BOTTOM_MM + AIR_HEIGHT_MM * part);
    }

    private Point wood(long moment_s, double pct) {
        double part = (pct - woodLeast_pct) / (woodMost_pct - woodLeast_pct);
        return new Point(x_mm(moment_s), WOOD_BOTTOM_MM + WOOD_HEIGHT_MM * part);
    }
}
