package afterlength.start.demo;

import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Strings;
import java.awt.Color;
import java.util.List;

/** The strings from above: wound ones thicker, each with a light line towards the lamp and a shadow on what lies below. */
final class StringPaint {
    private static final double[] BREADTH_MM = {0.95, 0.85, 0.75, 0.5};
    private static final Color OLD = new Color(98, 88, 72);
    private static final Color OLD_LIGHT = new Color(158, 146, 122);
    private static final Color CLEAN = new Color(128, 126, 122);
    private static final Color CLEAN_LIGHT = new Color(222, 220, 212);

    private StringPaint() {}

    static void paint(Canvas canvas, DemoInstrument instrument) {
        double stoutness = instrument.shape().stoutness();
        List<Curve> strings = Strings.of(instrument.shape());
        List<Curve> inPegbox = Strings.inPegbox(instrument.shape());
        for (int i = 0; i < strings.size(); i++) {
            double breadth_mm = Math.max(BREADTH_MM[i] * stoutness, 1.25 * canvas.pixel_mm());
            canvas.stroke(
                    Shapes.line(strings.get(i).shifted(1.6 * stoutness, 1.6)),
                    breadth_mm * 1.5,
                    new Color(15, 8, 4, 55));
            paintOne(canvas, inPegbox.get(i), breadth_mm * 0.8, instrument.isSetUpAnew());
            paintOne(canvas, strings.get(i), breadth_mm, instrument.isSetUpAnew());
        }
    }

    private static void paintOne(Canvas canvas, Curve string, double breadth_mm, boolean clean) {
        canvas.stroke(Shapes.line(string), breadth_mm, clean ? CLEAN : OLD);
        Curve lit = string.shifted(-0.18 * breadth_mm, 0);
        canvas.stroke(Shapes.line(lit), breadth_mm * 0.4, clean ? CLEAN_LIGHT : OLD_LIGHT);
    }
}
