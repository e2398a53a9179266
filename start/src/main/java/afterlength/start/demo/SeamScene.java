package afterlength.start.demo;

/**
 * The lower treble bout from outside: edge of the belly above, then the seam, the rib below it, and the edge of the back. The
 * bout comes towards the camera in the middle of the picture.
 */
final class SeamScene {
    private static final double PIXELS_PER_MM = 15.5;
    /** Radius of the bout as the camera sees it. */
    private static final double RADIUS_MM = 118;
    /** How much a level line rises in the picture towards the sides, as a share of the bout's depth. */
    private static final double VIEW = 0.20;

    private static final double EDGE_MM = 4.6;
    private static final double RIB_MM = 38;
    /** Half of the stretch along which the seam stands open, and its greatest gap. */
    private static final double OPEN_MM = 33;

    private static final double GAP_MM = 1.25;

    private final Canvas canvas;
    private final DemoInstrument instrument;
    private final boolean isOpen;
    private final Spruce spruce;
    private final Maple ribMaple;
    private final Colour colour = new Colour();

    private SeamScene(DemoInstrument instrument) {
        this.canvas = new Canvas(Frame.close(0, 0, DemoView.CLOSE.width() / PIXELS_PER_MM, 0));
        this.instrument = instrument;
        this.isOpen = !instrument.isSetUpAnew();
        this.spruce = new Spruce(instrument.seed(), 1, 1 / PIXELS_PER_MM);
        this.ribMaple = new Maple(instrument.noise(), 8, 0.1, 1);
    }

    static Canvas painted(DemoInstrument instrument) {
        SeamScene scene = new SeamScene(instrument);
        Backdrop.paint(scene.canvas, instrument.noise());
        int width = DemoView.CLOSE.width();
        int height = DemoView.CLOSE.height();
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                scene.paint(row * width + column, column + 0.5 - width / 2.0, row + 0.5 - 250);
            }
        }
        return scene.canvas;
    }

    /** Where one part ends and the next begins, a pixel is looked at four times, so that borders are smooth. */
    private void paint(int at, double right, double down) {
        double x_mm = right / PIXELS_PER_MM;
        double sine = Math.min(Math.max((x_mm + 6) / RADIUS_MM, -0.99), 0.99);
        double facing = Math.sqrt(1 - sine * sine);
        double along_mm = Math.asin(sine) * RADIUS_MM;
        double level_mm = down / PIXELS_PER_MM + (1 - facing) * RADIUS_MM * VIEW;
        double gap_mm = gap_mm(along_mm);
        int ground = canvas.pixels()[at];
        int tone = tone(ground, x_mm, level_mm, along_mm, gap_mm, sine);
        if (isAtBorder(level_mm, gap_mm)) {
            for (int i = 1; i < 4; i++) {
                int other = tone(ground, x_mm, level_mm + (i - 1.5) / 3 / PIXELS_PER_MM, along_mm, gap_mm, sine);
                tone = Rgb.mixed(tone, other, 255 / (i + 1));
            }
        }
        canvas.pixels()[at] = tone;
    }

    private static boolean isAtBorder(double level_mm, double gap_mm) {
        double near_mm = 1.2 / PIXELS_PER_MM;
        return Math.abs(level_mm) < near_mm
                || Math.abs(level_mm - EDGE_MM) < near_mm
                || Math.abs(level_mm - EDGE_MM - gap_mm) < near_mm
                || Math.abs(level_mm - EDGE_MM - RIB_MM) < near_mm
                || Math.abs(level_mm - 2 * EDGE_MM - RIB_MM) < near_mm;
    }

    /** From the top of the picture down: belly, its edge, the seam, rib, back, bench. */
    private int tone(int ground, double x_mm, double level_mm, double along_mm, double gap_mm, double sine) {
        double facing = Math.sqrt(1 - sine * sine);
        double rib_mm = level_mm - EDGE_MM;
        if (level_mm < 0) {
            return belly(x_mm, -level_mm);
        } else if (rib_mm < 0) {
            return edge(along_mm, level_mm / EDGE_MM, facing, sine);
        } else if (rib_mm < gap_mm) {
            return gap(along_mm, rib_mm / gap_mm);
        } else if (rib_mm < RIB_MM) {
            return rib(along_mm, rib_mm, gap_mm, facing, sine);
        } else if (rib_mm < RIB_MM + EDGE_MM) {
            return edge(along_mm + 400, (rib_mm - RIB_MM) / EDGE_MM, facing, sine);
        }
        return bench(ground, rib_mm - RIB_MM - EDGE_MM);
    }

    private double gap_mm(double along_mm) {
        double share = (along_mm - 6) / OPEN_MM;
        double bump = Math.max(0, 1 - share * share);
        double ragged = 1 + 0.16 * instrument.noise().at(along_mm / 2.4, 77);
        return isOpen ? GAP_MM * Math.pow(bump, 0.8) * ragged : 0;
    }

    /** The belly rises away from the camera; its depth is seen strongly shortened. */
    private int belly(double x_mm, double up_mm) {
        double depth_mm = up_mm * 4.2;
        double sideways_mm = x_mm * (1 + depth_mm / 700);
        spruce.colourAt(60 + sideways_mm * 0.35 + depth_mm, 300 + sideways_mm, colour);
        instrument.varnish().cover(60 + depth_mm, 300 + sideways_mm, depth_mm + 1.5, colour);
        double purfling = Math.abs(depth_mm - 5.2 - 0.65);
        double hollow = Math.exp(-(depth_mm - 8) * (depth_mm - 8) / 30);
        if (purfling < 0.75) {
            colour.towards(0.012, 0.006, 0.004, purfling > 0.28 ? 0.85 : 0.15);
        }
        double slope = 0.22 * Math.sin(Math.min(depth_mm / 40, 1) * Math.PI) - 0.25 * Math.exp(-depth_mm / 3);
        double shine = 0.22 * Light.gloss(-0.1, -slope - 0.05) * colour.gloss;
        return colour.rgb(Light.diffuse(0, -slope) * instrument.varnish().dirtAt(x_mm, depth_mm, hollow), shine);
    }

    /** The rounded edge of a plate; {@code share} runs from its upper to its lower side. */
    private int edge(double along_mm, double share, double facing, double sine) {
        double round = (share - 0.42) * 2;
        Noise noise = instrument.noise();
        double grain = 1 + 0.10 * noise.at(along_mm * 0.35, share * 5) + 0.06 * noise.at(along_mm * 2.2, share * 2.5);
        double worn = Math.max(0, 0.30 + 0.8 * noise.cloud(along_mm / 21, 9 + share * 0.4));
        colour.set(0.33 * grain, 0.128 * grain, 0.024 * grain, 1);
        colour.towards(0.47, 0.30, 0.13, Math.min(0.8 * worn * Math.max(0, 1 - round * round * 1.4), 0.7));
        double bright = Light.diffuse(sine * 0.5, 0.75 * round) * (0.55 + 0.45 * facing);
        return colour.rgb(bright, 0.20 * Light.gloss(sine * 0.2 - 0.2, 0.6 * round - 0.25) * facing);
    }

    /** Bare wood and old glue on the lips, darkness inside. */
    private int gap(double along_mm, double share) {
        double lip = Math.max(0, Math.abs(share - 0.45) * 2 - 0.72) * 2.2;
        double crumb = 0.5 * Math.max(0, instrument.noise().cloud(along_mm * 1.4, share * 1.5) - 0.25);
        colour.set(0.008, 0.005, 0.003, 0);
        colour.towards(0.30, 0.20, 0.10, Math.min(0.75 * lip + crumb, 0.9));
        return colour.rgb(1, 0);
    }

    private int rib(double along_mm, double rib_mm, double gap_mm, double facing, double sine) {
        ribMaple.colourAt(rib_mm + 150, along_mm * 1.02, colour);
        instrument.varnish().cover(along_mm + 900, rib_mm, 8, colour);
        double underEdge = Math.exp(-(rib_mm - gap_mm) / 2.2) + 0.8 * Math.exp(-(RIB_MM - rib_mm) / 2.4);
        double glueLine = isOpen && gap_mm > 0.05 ? 0 : 0.35 * Math.exp(-rib_mm * rib_mm / 0.05);
        double bright = Light.diffuse(sine * 0.9, 0.05) * (1 - 0.62 * Math.min(underEdge, 1)) * (1 - glueLine);
        double dirt = instrument.varnish().dirtAt(along_mm, rib_mm, Math.min(underEdge * 1.4, 1));
        double band = Math.exp(-Math.pow((sine + 0.28) / 0.16, 2));
        return colour.rgb(bright * dirt * (0.45 + 0.55 * facing), 0.028 * band * colour.gloss);
    }

    private static int bench(int ground, double below_mm) {
        double shadow = 0.80 * Math.exp(-below_mm / 7);
        return Rgb.mixed(ground, 0x1a0f08, (int) (255 * shadow));
    }
}
