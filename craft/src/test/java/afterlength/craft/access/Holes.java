package afterlength.craft.access;

import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The holes that the bench measures the passage on, with as many corners as asked for, and both ways to the thickest bar. */
public final class Holes {
    /** How far a tracing hand wavers, our own choice. */
    private static final double HAND_MM = 0.03;

    private Holes() {}

    /** A violin's sound-hole as a hand traces it. */
    public static Outline traced(int points) {
        List<Point> edge =
                SoundHole.treble(InstrumentShape.violin()).outline(0.05).points();
        SplittableRandom hand = new SplittableRandom(1);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            Point point = edge.get((int) ((long) i * edge.size() / points));
            ring.add(point.plus(hand.nextDouble(-HAND_MM, HAND_MM), hand.nextDouble(-HAND_MM, HAND_MM)));
        }
        return new Outline(ring);
    }

    public static Outline round(int points) {
        return Figures.circle(4.5, points);
    }

    /** A ring of waves. */
    public static Outline wavy(int points) {
        return Figures.waves(new SplittableRandom(7), points);
    }

    /** All that the page asks about one bar, with the largest thickness for its width; 0 when nothing passes. */
    public static double thickest_mm(Outline hole, double width_mm) {
        SectionQuestion question = new SectionQuestion(
                hole,
                new Section(width_mm, width_mm / 3),
                SectionQuestion.USUAL_CLEARANCE_MM,
                SectionQuestion.USUAL_PLATE_MM);
        return ((SectionPassage) SectionPassage.of(question))
                .findLargestThickness()
                .map(placed -> placed.section().thickness_mm())
                .orElse(0.0);
    }

    /** The same thickness alone, on squares of paper at every turn. */
    public static double thickestOnPaper_mm(Outline hole, double width_mm) {
        return new RasterOracle(hole).thickest(width_mm).low_mm();
    }
}
