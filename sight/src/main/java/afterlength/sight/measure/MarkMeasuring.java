package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * One mark, from pixels to millimetres in the plane it lies in. Every term of the ± is the slope of the value itself along what
 * is uncertain: each coordinate of each point by the picking error, the view by its covariance, the height by its deviation. So
 * a crooked line needs no formula of its own.
 */
final class MarkMeasuring {
    private static final double SLOPE_STEP_PX = 0.5;
    private static final double SLOPE_STEP_MM = 0.5;

    /** So many lengths of the card outwards a place is still measured. */
    private static final double FARTHEST_CARD_LENGTHS = 3;

    private final FittedView fitted;
    private final View view;
    private final View otherPrint;
    private final Card card;
    private final Print print;
    private final double picking_px;

    /** @param otherPrint solved from the strained print */
    MarkMeasuring(FittedView fitted, View otherPrint, Card card, Print print, double picking_px) {
        this.fitted = fitted;
        this.view = fitted.view();
        this.otherPrint = otherPrint;
        this.card = card;
        this.print = print;
        this.picking_px = picking_px;
    }

    MarkAnswer measure(Mark mark) {
        double height_mm = mark.height().mm();
        if (mark.pixels().stream().anyMatch(pixel -> !view.meets(pixel, height_mm))) {
            return new MarkAnswer.NotMeasured(
                    mark.id(),
                    "A point of this mark lies beyond the horizon of the card's plane. Mark nearer to the card.");
        }
        List<Point> places = places(view, mark, height_mm);
        double out_mm = places.stream().mapToDouble(this::outsideCard_mm).max().orElse(0);
        double permitted_mm = FARTHEST_CARD_LENGTHS * card.longestSide_mm();
        if (out_mm > permitted_mm) {
            return new MarkAnswer.NotMeasured(
                    mark.id(),
                    String.format(
                            Locale.ROOT,
                            "A point of this mark lies %.0f mm outside the card; up to %.0f mm are measured (three lengths of the"
                                    + " card). Lay the card nearer and take the picture again.",
                            out_mm,
                            permitted_mm));
        }
        return answer(mark, places);
    }

    private MarkAnswer answer(Mark mark, List<Point> places) {
        return switch (mark.kind()) {
            case LINE -> {
                double length_mm = PlaneFigure.length_mm(places);
                yield new MarkAnswer.Line(
                        mark.id(),
                        length_mm,
                        terms(mark, PlaneFigure::length_mm, length_mm * print.deviation()),
                        places);
            }
            case AREA -> {
                double area_mm2 = PlaneFigure.area_mm2(places);
                yield new MarkAnswer.Area(
                        mark.id(),
                        area_mm2,
                        terms(mark, PlaneFigure::area_mm2, 2 * area_mm2 * print.deviation()),
                        PlaneFigure.outline_mm(places),
                        places);
            }
            case POINT -> new MarkAnswer.Place(mark.id(), places.get(0), placeTerms(mark, places.get(0)));
        };
    }

    private Terms terms(Mark mark, ToDoubleFunction<List<Point>> value, double print) {
        double height_mm = mark.height().mm();
        return new Terms(
                picking(mark, value),
                fitted.deviation(other -> value.applyAsDouble(places(other, mark, height_mm))),
                height(mark, value),
                Math.hypot(print, strain(mark, value)));
    }

    /** A print that is off by other shares across and along also tilts the camera, which tells far from the card. */
    private double strain(Mark mark, ToDoubleFunction<List<Point>> value) {
        double height_mm = mark.height().mm();
        return Math.abs(value.applyAsDouble(places(otherPrint, mark, height_mm))
                - value.applyAsDouble(places(view, mark, height_mm)));
    }

    /** For a place the terms of its two coordinates are joined. */
    private Terms placeTerms(Mark mark, Point place) {
        double fromCorner_mm = Math.hypot(place.x_mm(), place.y_mm());
        Terms x = terms(mark, places -> places.get(0).x_mm(), 0);
        Terms y = terms(mark, places -> places.get(0).y_mm(), 0);
        return new Terms(
                Math.hypot(x.picking(), y.picking()),
                Math.hypot(x.card(), y.card()),
                Math.hypot(x.height(), y.height()),
                Math.hypot(fromCorner_mm * print.deviation(), Math.hypot(x.print(), y.print())));
    }

    private double picking(Mark mark, ToDoubleFunction<List<Point>> value) {
        double squares = 0;
        for (int n = 0; n < mark.pixels().size(); n++) {
            double right = slope(mark, value, n, SLOPE_STEP_PX, 0);
            double down = slope(mark, value, n, 0, SLOPE_STEP_PX);
            squares += right * right + down * down;
        }
        return picking_px * Math.sqrt(squares);
    }

    private double slope(Mark mark, ToDoubleFunction<List<Point>> value, int point, double right, double down) {
        double ahead = value.applyAsDouble(
                places(view, moved(mark, point, right, down), mark.height().mm()));
        double behind = value.applyAsDouble(
                places(view, moved(mark, point, -right, -down), mark.height().mm()));
        return (ahead - behind) / (2 * SLOPE_STEP_PX);
    }

    private double height(Mark mark, ToDoubleFunction<List<Point>> value) {
        double height_mm = mark.height().mm();
        double above = value.applyAsDouble(places(view, mark, height_mm + SLOPE_STEP_MM));
        double below = value.applyAsDouble(places(view, mark, height_mm - SLOPE_STEP_MM));
        return Math.abs(above - below) / (2 * SLOPE_STEP_MM) * mark.height().deviation_mm();
    }

    private static Mark moved(Mark mark, int point, double right, double down) {
        List<Pixel> pixels = new ArrayList<>(mark.pixels());
        Pixel from = pixels.get(point);
        pixels.set(point, new Pixel(from.x() + right, from.y() + down));
        return new Mark(mark.id(), mark.kind(), pixels, mark.height());
    }

    private static List<Point> places(View view, Mark mark, double height_mm) {
        return mark.pixels().stream().map(pixel -> view.place(pixel, height_mm)).toList();
    }

    private double outsideCard_mm(Point place) {
        double x_mm = Math.max(0, Math.max(-place.x_mm(), place.x_mm() - card.width_mm()));
        double y_mm = Math.max(0, Math.max(-place.y_mm(), place.y_mm() - card.height_mm()));
        return Math.hypot(x_mm, y_mm);
    }
}
