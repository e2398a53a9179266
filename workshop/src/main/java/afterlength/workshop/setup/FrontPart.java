package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.TemplateCrown;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Bounds;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.SvgPen;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The drawing on the workbench with the handles that lie over it, in the same millimetres.
 *
 * @param view the picture's frame, the drawing and a margin
 */
record FrontPart(BridgeShape shape, Drawing drawing, Bounds view, Optional<Drawing> body, List<BenchHandle> handles) {
    /** As much as {@link SvgPen} leaves around a drawing, so that both lie on each other. */
    private static final double MARGIN_MM = 1;

    static FrontPart of(BridgeShape shape, BenchBow bow) {
        Drawing drawing = BenchFront.of(shape, bow);
        Bounds view = drawing.bounds().grown(MARGIN_MM);
        return new FrontPart(shape, drawing, view, BodyView.find(shape, bow), BenchHandles.of(shape));
    }

    String svg() {
        return SvgPen.forScreen(drawing);
    }

    String bodySvg() {
        return body.map(SvgPen::forScreen).orElse("");
    }

    String viewBox() {
        return "0 0 " + number(view.width_mm()) + " " + number(view.height_mm());
    }

    String x(BenchHandle handle) {
        return number(handle.at().x_mm() - view.left_mm());
    }

    String y(BenchHandle handle) {
        return number(view.top_mm() - handle.at().y_mm());
    }

    /** Large enough for a finger: some 22 px when the drawing fills its column. */
    String reach() {
        return number(view.width_mm() / 34);
    }

    String ring() {
        return number(view.width_mm() / 90);
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    static String words(BenchHandle handle) {
        return Figures.fixed(handle.value(), 1) + " " + handle.unit();
    }

    /** The points that the handles move, for the page to write back. */
    String points() {
        return shape.inputs().crown() instanceof TemplateCrown template
                ? template.points().stream().map(FrontPart::point).collect(Collectors.joining("|"))
                : "";
    }

    private static String point(CrossPoint point) {
        return Figures.typed(point.y_mm()) + " " + Figures.typed(point.z_mm());
    }
}
