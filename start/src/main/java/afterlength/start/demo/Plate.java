package afterlength.start.demo;

import afterlength.craft.geometry.BodyOutline;
import afterlength.craft.geometry.Outline;
import java.awt.Color;
import java.awt.geom.Path2D;

/** A varnished, arched plate with its purfling: belly or back. */
final class Plate {
    private static final double PURFLING_MM = 4.0;
    private static final double PURFLING_BREADTH_MM = 1.3;

    private final DemoInstrument instrument;
    private final Surface wood;
    private final Outline edge;
    private final Path2D shape;
    private final Relief relief;
    private final double size;
    private final boolean isBack;

    /** A belly lies as the player sees it; on a back the bass side is on the right. */
    Plate(DemoInstrument instrument, Surface wood, boolean isBack) {
        this.instrument = instrument;
        this.wood = wood;
        this.isBack = isBack;
        this.size = instrument.size();
        this.edge = BodyOutline.of(instrument.shape().body()).outline(0.6 * size);
        this.shape = Shapes.area(BodyOutline.of(instrument.shape().body()));
        this.relief = new Relief(shape, 1.1 * size, (x_mm, y_mm, distance_mm) -> height_mm(distance_mm), 14);
    }

    Path2D shape() {
        return shape;
    }

    void paint(Canvas canvas) {
        Colour colour = new Colour();
        canvas.shade(shape, (x_mm, y_mm) -> tone(x_mm, y_mm, colour));
        paintPurfling(canvas);
        canvas.stroke(shape, 0.22 * size, new Color(26, 12, 5, 120));
    }

    /** Rounded edge, hollow beside the purfling, arch. */
    private double height_mm(double distance_mm) {
        double d = distance_mm / instrument.shape().stoutness();
        double rim = d < 2.4 ? 1 - (1 - d / 2.4) * (1 - d / 2.4) : 1;
        double hollow = Math.exp(-(d - 7) * (d - 7) / 14);
        double rise = Math.min(Math.max(d - 5, 0) / 56, 1);
        return size * (1.5 * rim - 1.0 * hollow + 15.5 * (1 - Math.cos(Math.PI * rise)) / 2);
    }

    private int tone(double x_mm, double y_mm, Colour colour) {
        double slopeX = relief.slopeX(x_mm, y_mm);
        double slopeY = relief.slopeY(x_mm, y_mm);
        double edge_mm = relief.distance_mm(x_mm, y_mm) / instrument.shape().stoutness();
        wood.colourAt(x_mm, y_mm, colour);
        instrument.varnish().cover(isBack ? -x_mm : x_mm, y_mm, edge_mm, colour);
        double besideEdge = edge_mm > 20 ? 0 : Math.exp(-(edge_mm - 7) * (edge_mm - 7) / 20);
        double hollow = besideEdge + underTheStrings(x_mm, y_mm);
        double bright = Light.diffuse(slopeX, slopeY) * instrument.varnish().dirtAt(x_mm, y_mm, Math.min(hollow, 1));
        double rough = 1 + 0.25 * instrument.noise().at(x_mm / 3, y_mm / 8);
        double shine = Light.gloss(slopeX, slopeY) * colour.gloss * 0.17 * rough;
        return colour.rgb(bright, shine);
    }

    /** Rosin and dust lie round the bridge and towards the board. */
    private double underTheStrings(double x_mm, double y_mm) {
        if (isBack) {
            return 0;
        }
        double x = x_mm / (34 * size);
        double y = (y_mm - instrument.shape().body().stop_mm() + 12 * size) / (48 * size);
        double far = x * x + y * y;
        return far > 6 ? 0 : 0.8 * Math.exp(-far);
    }

    private void paintPurfling(Canvas canvas) {
        double stoutness = instrument.shape().stoutness();
        double breadth_mm = PURFLING_BREADTH_MM * stoutness;
        Path2D line = Shapes.area(edge.inset(PURFLING_MM * stoutness + breadth_mm / 2));
        canvas.stroke(line, breadth_mm, new Color(24, 13, 7, 225));
        canvas.stroke(line, breadth_mm * 0.42, new Color(150, 102, 52, 190));
    }
}
