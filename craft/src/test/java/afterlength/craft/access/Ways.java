package afterlength.craft.access;

import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import java.util.List;

/** Things to be brought through holes, of which hand geometry says whether they go in; for the tests and for the bench. */
public final class Ways {
    static final double CLEARANCE_MM = 0.3;

    /** On edge the cleat shows 8 × 1.2 mm, whose diagonal of 8.1 mm is far less than the opening of 12 mm. */
    static final Ways EASY =
            new Ways("cleat through a round hole", round(6), 3, 30, new Cleat(8, 8, 1.2), Point.of(20, 0));

    /**
     * The slot lets the cleat of 20 mm slide in flat only at 43° or steeper (1.2/sin 43° + 3.3/tan 43° = 5.3 mm of the 5.4 mm that two
     * clearances leave), and then it needs 20·sin 43° + 1.2·cos 43° = 14.5 mm below. There are 15.5.
     */
    static final Ways HARD =
            new Ways("long cleat slanting through a slot", slot(), 3, 15.5, new Cleat(20, 9.5, 1.2), Point.of(20, 30));

    /** The middle of a cube of 10 mm would have to cross the plate, and no plane through it cuts less than 100 mm². */
    static final Ways CUBE =
            new Ways("cube, hole of less area (none)", round(4.5), 3, 30, new Cleat(10, 10, 10), Point.of(20, 0));

    /**
     * Whoever crosses both faces of a plate of 3 mm in a hole of 6 mm lies at 26.5° or steeper, so a stick of 30 mm, whose upper end is
     * just going in, reaches 30·sin 26.5° − 3 = 10.4 mm below. There are 5.
     */
    static final Ways STICK =
            new Ways("stick, body not deep enough (none)", round(3), 3, 5, new Cleat(30, 2, 1.2), Point.of(20, 0));

    /** The same stick, and room for it. */
    static final Ways STICK_IN_A_DEEP_BODY =
            new Ways("the same stick, deep body", round(3), 3, 40, new Cleat(30, 2, 1.2), Point.of(20, 0));

    static final Ways CLAMP = new Ways("cleat on a clamp, a viola's sound-hole", clampInViola(25), besideLowerEye(25));

    /** The post stands in the hole; from its lower end, less than 10 mm from the middle of the eye, 25 mm do not reach 60. */
    static final Ways CLAMP_OUT_OF_REACH =
            new Ways("the same, crack out of reach (none)", clampInViola(25), besideLowerEye(60));

    /** What is to go where. */
    private record Thing(Cavity cavity, Carried carried) {}

    private final String title;
    private final Thing thing;
    private final Point crack;

    private Ways(String title, Outline hole, double plate_mm, double depth_mm, Cleat cleat, Point crack) {
        this(title, new Thing(new Cavity(hole, plate_mm, depth_mm), Carried.alone(cleat)), crack);
    }

    private Ways(String title, Thing thing, Point crack) {
        this.title = title;
        this.thing = thing;
        this.crack = crack;
    }

    public static List<Ways> list() {
        return List.of(EASY, HARD, CUBE, STICK, STICK_IN_A_DEEP_BODY, CLAMP, CLAMP_OUT_OF_REACH);
    }

    public String title() {
        return title;
    }

    Cavity cavity() {
        return thing.cavity;
    }

    Carried carried() {
        return thing.carried;
    }

    Point crack() {
        return crack;
    }

    public MotionAnswer find(Watch watch) {
        return CleatPassage.find(cavity(), carried(), crack, 0, CLEARANCE_MM, watch);
    }

    private static Outline round(double radius_mm) {
        return Figures.circle(radius_mm, 64);
    }

    private static Outline slot() {
        return Figures.rectangle(40, 6);
    }

    private static Thing clampInViola(double throat_mm) {
        Cavity cavity = new Cavity(SoundHole.treble(InstrumentShape.viola()).outline(1), 2.7, 36);
        return new Thing(cavity, Carried.on(new Clamp(throat_mm, 10, 8, 2.2, 2.2, 3), new Cleat(9.5, 9.5, 1.2)));
    }

    private static Point besideLowerEye(double away_mm) {
        return SoundHole.lowerEye(InstrumentShape.viola()).plus(0, away_mm);
    }
}
