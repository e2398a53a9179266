package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeLoad;
import afterlength.craft.setup.StringThrust;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;

/** The thrust of every string on the bridge as an arrow, and what each foot carries; all arrows to one scale of force. */
final class LoadDrawing {
    private final BenchTail tail;
    private final BridgeLoad load;
    private final BridgeOutline outline;
    private final double size_mm;
    private final double scale_mm_N;
    private final Sketch sketch = new Sketch();

    private LoadDrawing(BenchTail tail, BridgeLoad load) {
        this.tail = tail;
        this.load = load;
        outline = new BridgeOutline(tail.shape());
        size_mm = Math.max(1, (outline.trebleEnd().x_mm() - outline.bassEnd().x_mm()) / 20);
        scale_mm_N = 0.55 * outline.projection_mm() / load.totalDownforce().newton();
    }

    static Drawing of(BenchTail tail, BridgeLoad load) {
        return new LoadDrawing(tail, load).draw();
    }

    private Drawing draw() {
        sketch.curve(outline.crown(), Stroke.of(Ink.FAINT, size_mm * 0.08));
        double reach_mm = 2.2 * outline.trebleEnd().x_mm();
        sketch.line(new Point(-reach_mm, 0), new Point(reach_mm, 0), Stroke.of(Ink.INK, size_mm * 0.06));
        for (int string = 0; string < load.strings().size(); string++) {
            string(outline.stringCentre(string), load.strings().get(string));
        }
        double foot_mm = tail.get(BenchReading.HALF_FEET);
        foot(-foot_mm, load.onBassFoot().newton(), Anchor.END);
        foot(foot_mm, load.onTrebleFoot().newton(), Anchor.START);
        return sketch.drawing("The load on the bridge", LoadPart.sentence(load));
    }

    /** Three times as long as the arrows of the feet, so that the sideways part can be seen. */
    private void string(Point at, StringThrust thrust) {
        Point head = at.moved(
                3 * scale_mm_N * thrust.sideways().newton(),
                -3 * scale_mm_N * thrust.downforce().newton());
        arrow(at, head, Ink.ACCENT);
        words(Figures.fixed(thrust.downforce().newton(), 0), head.moved(0, -1.2 * size_mm), Anchor.MIDDLE);
        words(thrust.name(), at.moved(0, 0.7 * size_mm), Anchor.MIDDLE);
    }

    private void foot(double x_mm, double force_N, Anchor anchor) {
        Point under = new Point(x_mm, -scale_mm_N * force_N);
        arrow(under, new Point(x_mm, 0), Ink.INK);
        double aside_mm = anchor == Anchor.START ? size_mm : -size_mm;
        words(Figures.fixed(force_N, 0) + " N", under.moved(aside_mm, 0), anchor);
    }

    private void arrow(Point from, Point to, Ink ink) {
        Stroke stroke = Stroke.of(ink, size_mm * 0.1);
        double length_mm = from.distanceTo_mm(to);
        if (length_mm == 0) {
            return;
        }
        double x = (to.x_mm() - from.x_mm()) / length_mm * size_mm * 0.5;
        double y = (to.y_mm() - from.y_mm()) / length_mm * size_mm * 0.5;
        sketch.line(from, to, stroke)
                .line(to, to.moved(-x - y * 0.6, -y + x * 0.6), stroke)
                .line(to, to.moved(-x + y * 0.6, -y - x * 0.6), stroke);
    }

    private void words(String words, Point at, Anchor anchor) {
        sketch.words(words, at, size_mm, anchor, Face.SANS, Ink.INK);
    }
}
