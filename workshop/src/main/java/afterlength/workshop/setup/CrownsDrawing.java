package afterlength.workshop.setup;

import afterlength.craft.setup.CrownTried;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.RadiusCrown;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;

/** Several crowns over each other on the same outer strings: the radius unbroken, the template in long dashes, even play in short. */
final class CrownsDrawing {
    private final BridgeOutline first;
    private final double size_mm;
    private final Sketch sketch = new Sketch();

    private CrownsDrawing(CrownTried any) {
        first = new BridgeOutline(any.shape());
        size_mm = Math.max(1, (first.trebleEnd().x_mm() - first.bassEnd().x_mm()) / 56);
    }

    static Drawing of(List<CrownTried> crowns) {
        CrownsDrawing drawing = new CrownsDrawing(crowns.get(0));
        for (int n = 0; n < crowns.size(); n++) {
            drawing.crown(crowns.get(n), n);
        }
        String names = String.join(", ", crowns.stream().map(CrownWords::name).toList());
        return drawing.sketch.drawing("Crowns over each other", names);
    }

    private void crown(CrownTried tried, int line) {
        BridgeOutline outline = new BridgeOutline(tried.shape());
        Stroke stroke = stroke(tried);
        sketch.curve(outline.crown(), stroke);
        for (int string = 0; string < tried.shape().strings().size(); string++) {
            double radius_mm = tried.shape().inputs().strings().get(string).diameter_mm() / 2;
            sketch.circle(outline.stringCentre(string), radius_mm, Stroke.of(Ink.FAINT, size_mm * 0.05));
        }
        double y_mm = lowest_mm() - (0.6 + 1.5 * line) * size_mm;
        Point from = new Point(-6 * size_mm, y_mm + 0.3 * size_mm);
        sketch.line(from, from.moved(4.5 * size_mm, 0), stroke);
        sketch.words(CrownWords.name(tried), new Point(-size_mm, y_mm), size_mm, Anchor.START, Face.SANS, Ink.INK);
    }

    private double lowest_mm() {
        return Math.min(first.bassEnd().y_mm(), first.trebleEnd().y_mm());
    }

    private Stroke stroke(CrownTried tried) {
        double width_mm = size_mm * 0.09;
        if (tried.crown() instanceof RadiusCrown) {
            return Stroke.of(Ink.INK, width_mm);
        }
        return tried.crown() instanceof EvenPlayCrown
                ? Stroke.dashed(Ink.ACCENT, width_mm * 1.3, 0.25 * size_mm, 0.3 * size_mm)
                : Stroke.dashed(Ink.INK, width_mm * 1.3, 1.2 * size_mm, 0.5 * size_mm);
    }
}
