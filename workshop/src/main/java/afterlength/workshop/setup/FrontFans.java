package afterlength.workshop.setup;

import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BowedString;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Angle;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The clear angle of every string as a fan over it, its two sides square to the bow at its limits; the tightest is marked. */
final class FrontFans {
    private static final int PIECES = 20;

    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    FrontFans(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    void draw(BowReading reading) {
        @Nullable BowedString tightest = reading.findTightest().orElse(null);
        for (int string = 0; string < reading.strings().size(); string++) {
            fan(string, reading.strings().get(string), tightest);
        }
        toTheWaist(0, reading.strings().get(0).findLimitBass(), -1);
        int last = reading.strings().size() - 1;
        toTheWaist(last, reading.strings().get(last).findLimitTreble(), 1);
    }

    private double reach_mm() {
        return 5.2 * look.figure_mm();
    }

    private void fan(int string, BowedString bowed, @Nullable BowedString tightest) {
        Optional<Angle> bass = bowed.findLimitBass();
        Optional<Angle> treble = bowed.findLimitTreble();
        if (bass.isEmpty() || treble.isEmpty()) {
            bass.or(() -> treble).ifPresent(limit -> side(string, limit, Ink.FAINT));
            return;
        }
        boolean isTightest = bowed.equals(tightest);
        if (bass.get().deg() > treble.get().deg()) {
            sketch.area(sector(string, bass.get(), treble.get()), null, Ink.BAND);
        }
        side(string, bass.get(), isTightest ? Ink.ACCENT : Ink.FAINT);
        side(string, treble.get(), isTightest ? Ink.ACCENT : Ink.FAINT);
        words(string, bowed, isTightest);
    }

    private List<Point> sector(int string, Angle bass, Angle treble) {
        List<Point> sector = new ArrayList<>();
        sector.add(outline.stringCentre(string));
        for (int i = 0; i <= PIECES; i++) {
            double turn_deg = bass.deg() + (treble.deg() - bass.deg()) * i / PIECES;
            sector.add(over(string, turn_deg, reach_mm()));
        }
        return sector;
    }

    private void side(int string, Angle limit, Ink ink) {
        sketch.line(
                outline.stringCentre(string),
                over(string, limit.deg(), reach_mm()),
                Stroke.of(ink, look.line_mm() * (ink == Ink.ACCENT ? 1.6 : 1)));
    }

    /** Square to a bow that rises to the treble by this angle. */
    private Point over(int string, double bow_deg, double reach_mm) {
        double bow_rad = Math.toRadians(bow_deg);
        return outline.stringCentre(string).moved(-reach_mm * Math.sin(bow_rad), reach_mm * Math.cos(bow_rad));
    }

    private void words(int string, BowedString bowed, boolean isTightest) {
        double middle_deg = (bowed.findLimitBass().orElseThrow().deg()
                        + bowed.findLimitTreble().orElseThrow().deg())
                / 2;
        Point at = over(string, middle_deg, reach_mm() + 0.7 * look.figure_mm());
        String angle = Figures.fixed(bowed.findClearAngle().orElseThrow().deg(), 1) + "°";
        Ink ink = isTightest ? Ink.ACCENT : Ink.INK;
        sketch.words(angle, at, look.figure_mm(), Anchor.MIDDLE, Face.SANS_STRONG, ink);
        if (isTightest) {
            sketch.words(
                    "tightest",
                    at.moved(0, 1.05 * look.figure_mm()),
                    look.small_mm(),
                    Anchor.MIDDLE,
                    Face.SERIF_ITALIC,
                    Ink.ACCENT);
        }
    }

    /** As far as the drawing goes. */
    private void toTheWaist(int string, Optional<Angle> limit, int side) {
        if (shape.inputs().waist() != null && limit.isPresent()) {
            double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
            Point on = over(string, limit.get().deg(), radius_mm);
            double out_mm = BenchFront.halfWidth_mm(shape) - side * on.x_mm();
            Point end =
                    on.moved(side * out_mm, side * out_mm * Math.tan(limit.get().rad()));
            sketch.line(on, end, Stroke.dashed(Ink.FAINT, look.line_mm(), 1.6, 1));
        }
    }
}
