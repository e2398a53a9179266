package afterlength.craft.geometry;

import java.util.List;
import java.util.stream.Stream;

/**
 * The head seen from the bass side: pegbox and scroll. The nut's upper edge lies in the origin, the scroll up the drawing, the
 * strings' side to the right, so the back of the neck lies at negative x. Drawn in our own proportions for a head 106 units
 * from nut to top, and scaled.
 */
public final class HeadSide {
    private static final double DRAWN_LENGTH = 106;
    private static final Point EYE = Point.of(-14.2, -79.6);
    private static final double EYE_RADIUS = 4.4;
    private static final Point CHIN = Point.of(-27.5, 6);

    /** From the back of the neck round over the top: begins below left, winds through three turns. */
    private static final Spiral VOLUTE = new Spiral(EYE, 28.2, EYE_RADIUS, 172, 1150);

    private static final Spiral CHAMFER = new Spiral(EYE, 26.7, EYE_RADIUS, 172, 1150);
    /** Where the spiral passes under the throat, in shares of all its turns: straight below, a little to the front. */
    private static final double THROAT = 271.0 / 1150;

    private final double factor;

    private HeadSide(double factor) {
        this.factor = factor;
    }

    public static HeadSide of(InstrumentShape instrument) {
        return new HeadSide(instrument.fittings().head_mm() / DRAWN_LENGTH);
    }

    /** The silhouette, closed along the line of the nut. */
    public Curve silhouette() {
        return contour().then(sized(Curve.line(Point.of(0, 0), CHIN)));
    }

    /** Where the pegbox's back ends and the neck begins. */
    Point chin() {
        return CHIN.scaled(factor);
    }

    /** The open line from the chin round the scroll to the nut. */
    public Curve contour() {
        return sized(back().then(VOLUTE.part(0, THROAT)).then(front()));
    }

    /** The winding inside the silhouette, from the throat to the eye. */
    public Curve volute() {
        return sized(VOLUTE.part(THROAT, 1));
    }

    /**
     * How many turns of the spiral lie between a place and the outer edge in the same direction from the eye, from 0 at the
     * edge; negative outside, on the pegbox.
     */
    public double turnsFromEdge(Point place) {
        Point drawn = place.scaled(1 / factor);
        return VOLUTE.turnsFromEdge(drawn);
    }

    /** How far round the eye a place lies, 0 to 1, from where the spiral begins at the back. */
    public double wayRound(Point place) {
        return VOLUTE.wayRound(place.scaled(1 / factor));
    }

    /** What follows below the nut: face and lower edge of the board, back of the neck, as far as a hand's breadth. */
    public List<Curve> neckLines() {
        Curve face = Curve.line(Point.of(0.6, 0), Point.of(0.6, 46));
        Curve under = Curve.line(Point.of(-4.8, 1), Point.of(-4.8, 46));
        CurvePen pen = CurvePen.at(CHIN, 96).curveTo(Point.of(-22, 17), 30, 0.5, 0.34);
        Curve back = pen.curveTo(Point.of(-19.4, 46), 90, 0.3, 0.4).lift();
        return List.of(sized(face), sized(under), sized(back));
    }

    /** The chamfer beside the edge, from the chin to the eye. */
    public Curve chamfer() {
        CurvePen pen = CurvePen.at(CHIN.plus(1.8, -2), -84);
        pen.curveTo(CHAMFER.at(0), CHAMFER.direction_deg(0), 0.42, 0.42);
        return sized(pen.lift().then(CHAMFER.part(0, 0.9)));
    }

    public Curve eye() {
        return sized(
                CurvePen.at(EYE.plus(EYE_RADIUS, 0), 90).arcAround(EYE, 360).lift());
    }

    /** Ends of the four pegs in the cheek, the one nearest the nut first. */
    public List<Curve> pegEnds() {
        return Stream.of(Point.of(-13, -14), Point.of(-15.6, -27), Point.of(-17.4, -40), Point.of(-20, -52))
                .map(centre -> sized(CurvePen.at(centre.plus(3.6, 0), 90)
                        .arcAround(centre, 360)
                        .lift()))
                .toList();
    }

    private static Curve back() {
        CurvePen pen = CurvePen.at(CHIN, -84);
        return pen.curveTo(VOLUTE.at(0), VOLUTE.direction_deg(0), 0.42, 0.42).lift();
    }

    private static Curve front() {
        CurvePen pen = CurvePen.at(VOLUTE.at(THROAT), 155);
        pen.curveTo(Point.of(-12.4, -50), 84, 0.45, 0.40);
        return pen.curveTo(Point.of(0, 0), 80, 0.33, 0.33).lift();
    }

    private Curve sized(Curve drawn) {
        return drawn.moved(point -> point.scaled(factor));
    }
}
