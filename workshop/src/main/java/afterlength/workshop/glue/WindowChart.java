package afterlength.workshop.glue;

import afterlength.craft.glue.FilmAt;
import afterlength.craft.glue.Spread;
import afterlength.craft.glue.WorkingWindow;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The film cooling over seconds: its temperature as a strong line, the band in which glue begins to gel, and the moment at which
 * the line meets the gel point. The dotted lines are the ends of the window.
 */
final class WindowChart {
    private static final double LEFT_MM = 15;
    private static final double RIGHT_MM = 150;
    private static final double BOTTOM_MM = 12;
    private static final double TOP_MM = 88;
    private static final double LETTER_MM = 3.4;
    private static final int LEAST_C = 10;
    private static final int MOST_C = 70;

    private final Spread spread;
    private final WorkingWindow.Known window;
    private final double end_s;
    private final Sketch sketch = new Sketch();

    private WindowChart(Spread spread, WorkingWindow.Known window) {
        this.spread = spread;
        this.window = window;
        this.end_s = window.cooling().get(window.cooling().size() - 1).time_s();
    }

    static Drawing of(Spread spread, WorkingWindow.Known window) {
        return new WindowChart(spread, window).draw();
    }

    private Drawing draw() {
        gelBand();
        axes();
        ends();
        sketch.curve(window.cooling().stream().map(this::at).toList(), Stroke.of(Ink.ACCENT, 0.8));
        meeting();
        return sketch.drawing(
                "Temperature of the film over seconds",
                "From " + Figures.fixed(spread.glue().celsius(), 0) + " °C on parts at "
                        + Figures.fixed(spread.part().celsius(), 0) + " °C: " + WindowWords.answer(window));
    }

    private void gelBand() {
        double gel_C = spread.gel().celsius();
        sketch.area(
                List.of(
                        place(0, gel_C - Spread.GEL_SPREAD_C),
                        place(end_s, gel_C - Spread.GEL_SPREAD_C),
                        place(end_s, gel_C + Spread.GEL_SPREAD_C),
                        place(0, gel_C + Spread.GEL_SPREAD_C)),
                null,
                Ink.BAND);
        sketch.words(
                "begins to gel",
                place(end_s, gel_C + Spread.GEL_SPREAD_C).moved(-1.5, 1.2),
                LETTER_MM,
                Anchor.END,
                Face.SERIF_ITALIC,
                Ink.INK);
    }

    private void axes() {
        for (int t_C = 20; t_C <= MOST_C; t_C += 10) {
            sketch.line(place(0, t_C), place(end_s, t_C), Stroke.of(Ink.FAINT, 0.12));
            sketch.words(
                    t_C + (t_C == MOST_C ? " °C" : ""),
                    place(0, t_C).moved(-1.5, -1.1),
                    LETTER_MM,
                    Anchor.END,
                    Face.SANS,
                    Ink.INK);
        }
        double every_s = every_s();
        for (double s = 0; s <= end_s; s += every_s) {
            Point foot = place(s, LEAST_C);
            sketch.line(foot, foot.moved(0, -1.2), Stroke.of(Ink.INK, 0.2));
            sketch.words(
                    Figures.plain(s) + (s + every_s > end_s ? " s" : ""),
                    foot.moved(0, -5),
                    LETTER_MM,
                    Anchor.MIDDLE,
                    Face.SANS,
                    Ink.INK);
        }
        sketch.line(place(0, LEAST_C), place(end_s, LEAST_C), Stroke.of(Ink.INK, 0.25));
    }

    /** Steps of 1, 2 or 5 times a power of ten, about six of them. */
    private double every_s() {
        double wanted = end_s / 6;
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double times = wanted / power;
        return power * (times < 1.5 ? 1 : times < 3.5 ? 2 : times < 7.5 ? 5 : 10);
    }

    private void ends() {
        for (OptionalDouble end :
                List.of(window.seconds().low_s(), window.seconds().high_s())) {
            if (end.isPresent() && end.getAsDouble() <= end_s) {
                sketch.line(
                        place(end.getAsDouble(), LEAST_C),
                        place(end.getAsDouble(), MOST_C),
                        Stroke.dashed(Ink.INK, 0.2, 0.8, 1.2));
            }
        }
    }

    private void meeting() {
        OptionalDouble typical = window.seconds().typical_s();
        if (typical.isEmpty() || typical.getAsDouble() > end_s) {
            return;
        }
        Point meet = place(typical.getAsDouble(), spread.gel().celsius());
        sketch.disc(meet, 1.1, null, Ink.ACCENT);
        sketch.wordsOnPaper(new Words(
                "about " + WindowWords.seconds(typical),
                meet.moved(2.4, 6),
                4.2,
                Anchor.START,
                0,
                Face.SANS_STRONG,
                Ink.ACCENT));
    }

    private Point at(FilmAt point) {
        return place(point.time_s(), point.film_C());
    }

    private Point place(double time_s, double t_C) {
        double part = (Math.max(LEAST_C, Math.min(MOST_C, t_C)) - LEAST_C) / (MOST_C - LEAST_C);
        return new Point(LEFT_MM + (RIGHT_MM - LEFT_MM) * time_s / end_s, BOTTOM_MM + (TOP_MM - BOTTOM_MM) * part);
    }
}
