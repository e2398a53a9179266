package afterlength.start.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.SplittableRandom;

/**
 * The inside of the back through a small camera: bare maple grey with dust, a label whose writing has gone. The lines on it
 * are strokes without letters; there is nothing to decipher and no name is meant.
 */
final class LabelScene {
    private static final double HALF_WIDTH_MM = 39;
    private static final double HALF_HEIGHT_MM = 22;

    private final DemoInstrument instrument;
    private final Canvas canvas = new Canvas(Frame.close(0, 2, 118, -4));
    private final SplittableRandom random;

    private LabelScene(DemoInstrument instrument) {
        this.instrument = instrument;
        this.random = new SplittableRandom(instrument.seed());
    }

    static Canvas painted(DemoInstrument instrument) {
        LabelScene scene = new LabelScene(instrument);
        scene.paintWood();
        scene.paintPaper();
        scene.paintWriting();
        scene.paintSpots();
        scene.paintDust();
        scene.dimCorners();
        return scene.canvas;
    }

    private void paintWood() {
        Maple maple = new Maple(instrument.noise(), 8.5, 0.15, 0.7);
        Noise noise = instrument.noise();
        Colour colour = new Colour();
        canvas.shade(new Rectangle2D.Double(-90, -90, 180, 180), (x_mm, y_mm) -> {
            maple.colourAt(x_mm + 70, y_mm, colour);
            colour.red *= 0.52;
            colour.green *= 0.46;
            colour.blue *= 0.42;
            double dust = 0.5 + 0.5 * noise.cloud(x_mm / 16, y_mm / 14);
            colour.towards(0.20, 0.18, 0.155, 0.45 * dust);
            // Tool marks of the toothed plane.
            double marks = 1 + 0.05 * Math.sin(x_mm * 2.4 + 0.6 * noise.at(x_mm / 5, y_mm / 22) * 6);
            return colour.rgb(marks, 0);
        });
    }

    private void paintPaper() {
        Path2D paper = paper();
        canvas.shadow(paper, 0.5, 0.7, 1.2, 0.8);
        Noise noise = instrument.noise();
        Relief edge = new Relief(paper, 0.5, (x_mm, y_mm, d) -> d, 0);
        Colour colour = new Colour();
        canvas.shade(paper, (x_mm, y_mm) -> {
            double stain = Math.max(0, noise.cloud(x_mm / 19 + 7, y_mm / 15) + 0.25);
            double tide = ring(Math.hypot((x_mm - 17) / 1.25, y_mm + 6) + 1.6 * noise.at(x_mm / 6, y_mm / 6), 17);
            double rim = Math.exp(-edge.distance_mm(x_mm, y_mm) / 3.2);
            colour.set(0.50, 0.395, 0.245, 0);
            colour.towards(0.22, 0.12, 0.045, Math.min(0.42 * stain + 0.40 * tide + 0.5 * rim, 0.88));
            double fibre = 1 + 0.03 * noise.at(x_mm * 3, y_mm * 3) + 0.03 * noise.at(x_mm * 0.8, y_mm * 5);
            double fold = 1 - 0.16 * Math.exp(-Math.pow((x_mm + 11 + y_mm * 0.06) / 0.35, 2));
            return colour.rgb(fibre * fold, 0);
        });
    }

    /** The dark rim a drop leaves when it dries. */
    private static double ring(double radius_mm, double rim_mm) {
        double inside = radius_mm < rim_mm ? 0.25 : 0;
        return inside + Math.exp(-Math.pow((radius_mm - rim_mm) / 0.8, 2));
    }

    /** A slip of paper with frayed edges and one corner gone. */
    private Path2D paper() {
        Noise noise = instrument.noise();
        Path2D paper = new Path2D.Double();
        int count = 240;
        for (int i = 0; i < count; i++) {
            double way = 8.0 * i / count;
            double x = Math.max(-1, Math.min(1, way < 4 ? way - 1 : 5 - way)) * HALF_WIDTH_MM;
            double y = Math.max(-1, Math.min(1, way < 2 ? -1 : way < 6 ? way < 4 ? way - 3 : 1 : 7 - way))
                    * HALF_HEIGHT_MM;
            double torn = Math.max(0, x / HALF_WIDTH_MM + y / HALF_HEIGHT_MM - 1.55) * 13;
            double fray_mm = 0.35 * noise.at(way * 19, 5) + 0.2 * noise.at(way * 60, 9);
            double newX = x - torn + fray_mm;
            double newY = y - torn * 0.7 + fray_mm;
            if (i == 0) {
                paper.moveTo(newX, newY);
            } else {
                paper.lineTo(newX, newY);
            }
        }
        paper.closePath();
        return paper;
    }

    private void paintWriting() {
        paintFrame(new Rectangle2D.Double(-36, -19, 72, 38), 0.28f);
        paintFrame(new Rectangle2D.Double(-35, -18, 70, 36), 0.14f);
        paintLine(-29, 27, -9, 3.4, 62);
        paintLine(-25, 30, 1, 2.8, 54);
        paintLine(-8, 24, 11, 2.6, 46);
    }

    private void paintFrame(Rectangle2D frame, float breadth_mm) {
        Area line = new Area(new BasicStroke(breadth_mm).createStrokedShape(frame));
        line.intersect(new Area(paper()));
        canvas.fill(line, new Color(60, 34, 16, 66));
    }

    /** Rust-brown spots of age. */
    private void paintSpots() {
        for (int i = 0; i < 46; i++) {
            double x_mm = random.nextDouble(-37, 35);
            double y_mm = random.nextDouble(-20, 19);
            double radius_mm = 0.25 + Math.pow(random.nextDouble(), 4) * 1.5;
            for (int ring = 4; ring >= 1; ring--) {
                double reach_mm = radius_mm * ring / 4;
                canvas.fill(
                        new Ellipse2D.Double(x_mm - reach_mm, y_mm - reach_mm * 0.9, 2 * reach_mm, 1.8 * reach_mm),
                        new Color(104, 62, 26, 26));
            }
        }
    }

    /** A run of pen strokes, up and down like handwriting, faded in places to nothing. */
    private void paintLine(double from_mm, double to_mm, double base_mm, double height_mm, int strongest) {
        double x_mm = from_mm;
        while (x_mm < to_mm) {
            double step_mm = random.nextDouble(0.7, 1.5);
            double tall_mm = height_mm * (random.nextInt(6) == 0 ? 1.9 : random.nextDouble(0.55, 1));
            double faded = Math.max(0, 0.55 + instrument.noise().at(x_mm / 7, base_mm));
            Path2D stroke = new Path2D.Double();
            stroke.moveTo(x_mm, base_mm);
            stroke.curveTo(
                    x_mm + step_mm * 0.6,
                    base_mm - tall_mm * 0.4,
                    x_mm + step_mm * 1.2,
                    base_mm - tall_mm,
                    x_mm + step_mm * 0.8,
                    base_mm - tall_mm);
            stroke.curveTo(
                    x_mm + step_mm * 0.3,
                    base_mm - tall_mm * 0.8,
                    x_mm + step_mm * 0.5,
                    base_mm,
                    x_mm + step_mm,
                    base_mm);
            int ink = (int) Math.min(strongest * faded, 90);
            canvas.stroke(stroke, 0.8, new Color(66, 36, 16, ink / 3));
            canvas.stroke(stroke, random.nextDouble(0.18, 0.42), new Color(52, 28, 14, ink));
            x_mm += random.nextInt(7) == 0 ? step_mm + 2.6 : step_mm;
        }
    }

    private void paintDust() {
        for (int i = 0; i < 420; i++) {
            double x_mm = random.nextDouble(-62, 62);
            double y_mm = random.nextDouble(-50, 50);
            double size_mm = Math.pow(random.nextDouble(), 3) * 0.7 + 0.08;
            Path2D hair = new Path2D.Double();
            hair.moveTo(x_mm, y_mm);
            double bend = random.nextDouble(-3, 3);
            hair.curveTo(
                    x_mm + bend * size_mm,
                    y_mm + size_mm,
                    x_mm + size_mm * 2,
                    y_mm - bend * size_mm,
                    x_mm + size_mm * 3,
                    y_mm);
            canvas.stroke(hair, 0.07 + size_mm * 0.12, new Color(188, 178, 160, random.nextInt(30, 120)));
        }
    }

    /** The lamp sits beside the lens: bright in the middle, dark towards the corners. */
    private void dimCorners() {
        int width = canvas.frame().width();
        int[] pixels = canvas.pixels();
        for (int i = 0; i < pixels.length; i++) {
            double x = (i % width - 760) / 830.0;
            double y = (i / width - 560) / 640.0;
            double dark = Math.min(Math.max((x * x + y * y - 0.25) * 0.95, 0), 0.94);
            pixels[i] = Rgb.mixed(pixels[i], 0x080503, (int) (255 * dark));
        }
    }
}
