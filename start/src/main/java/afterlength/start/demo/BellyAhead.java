package afterlength.start.demo;

import afterlength.craft.geometry.BodyOutline;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;

/** The belly running away from the camera, with its sound-holes. The arch is not built; only its light is. */
final class BellyAhead {
    /** Radius by which the slope across grows, so that the sides fall away from the lamp. */
    private static final double CROSS_ARCH_MM = 190;

    private static final double PLATE_MM = 2.6;

    private final Setting setting;
    private final Canvas canvas;
    private final DemoInstrument instrument;
    private final Spruce spruce;
    private final Colour colour = new Colour();

    BellyAhead(Setting setting) {
        this.setting = setting;
        this.canvas = setting.canvas();
        this.instrument = setting.instrument();
        this.spruce = new Spruce(instrument.seed(), 1, 0.12);
    }

    void paint() {
        Outline edge = BodyOutline.of(instrument.shape().body()).outline(1);
        Path2D body = setting.lying(edge.points(), 0);
        canvas.shadow(body, 10, -8, 20, 0.55);
        canvas.shade(body, (column, row) -> tone(setting.camera().onBelly(column, row)));
        for (double inset_mm : new double[] {4.3, 5.6}) {
            canvas.stroke(setting.lying(edge.inset(inset_mm).points(), 0), 3, new Color(28, 14, 7, 190));
        }
        Curve treble = SoundHole.treble(instrument.shape());
        paintHole(treble);
        paintHole(treble.mirrored());
    }

    private int tone(Point place) {
        double x_mm = place.x_mm();
        double down_mm = place.y_mm() - setting.stop_mm();
        spruce.colourAt(x_mm, place.y_mm(), colour);
        instrument.varnish().cover(x_mm, place.y_mm(), 40, colour);
        double slope = -x_mm / CROSS_ARCH_MM;
        double near = Math.exp(-down_mm * down_mm / 676 - x_mm * x_mm / 1156);
        double bright = Light.diffuse(slope, 0.05) * instrument.varnish().dirtAt(x_mm, place.y_mm(), near);
        double far = Math.min(Math.max(-down_mm / 160, 0), 1);
        double shine = 0.30 * Light.gloss(slope, -0.30 + down_mm / 900) * colour.gloss;
        return colour.rgb(bright * (1 - 0.35 * far), shine);
    }

    /** Towards the far side the camera looks on the cut edge of the belly, else into the dark. */
    private void paintHole(Curve hole) {
        List<Point> edge = hole.outline(0.4).points();
        Path2D rim = setting.lying(edge, 0);
        canvas.fill(rim, new Color(92, 56, 27));
        Area dark = new Area(rim);
        dark.intersect(new Area(setting.lying(edge, -PLATE_MM)));
        canvas.fill(dark, new Color(18, 10, 6));
        canvas.stroke(rim, 1.5, new Color(24, 11, 4, 150));
    }
}
