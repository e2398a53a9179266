package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import java.util.ArrayList;
import java.util.List;

/** The vector arithmetic behind {@link BridgeLoad}; origin at the belly under the bridge, on the centre line. */
final class BridgeThrust {
    private final BridgeShape shape;
    private final TailEnd tail;
    private final double halfFeet_mm;
    private final double slopeCos;
    private final double slopeSin;

    BridgeThrust(BridgeShape shape, TailEnd tail, double halfFeet_mm) {
        this.shape = shape;
        this.tail = tail;
        this.halfFeet_mm = halfFeet_mm;
        slopeCos = Math.cos(Math.toRadians(tail.boardSlope_deg()));
        slopeSin = Math.sin(Math.toRadians(tail.boardSlope_deg()));
    }

    BridgeLoad load() {
        List<StringThrust> strings = new ArrayList<>();
        Vector whole = new Vector(0, 0, 0);
        double onTreble_N = 0;
        for (int i = 0; i < shape.strings().size(); i++) {
            Vector thrust_N = thrust_N(i);
            StringThrust string = describe(i, thrust_N);
            strings.add(string);
            whole = whole.plus(thrust_N);
            onTreble_N += string.trebleFoot() * string.downforce().newton();
        }
        return new BridgeLoad(strings, lean(whole), onTreble_N / -whole.z());
    }

    private double tension_N(int string) {
        return shape.inputs().findTension_N(string).orElseThrow();
    }

    private Vector thrust_N(int string) {
        Vector bridge = bridgePoint(string);
        Vector toNut = nutPoint(string).minus(bridge).unit();
        Vector toTail = tailPoint(string).minus(bridge).unit();
        return toNut.plus(toTail).times(tension_N(string));
    }

    private Vector bridgePoint(int string) {
        SeatedString seated = shape.strings().get(string);
        return toBody(0, seated.bridgeY().mm(), seated.underside().mm() + radius_mm(string));
    }

    private Vector nutPoint(int string) {
        SeatedString seated = shape.strings().get(string);
        double x_mm = -shape.inputs().speakingLength_mm();
        return toBody(x_mm, seated.nutY().mm(), seated.nutUnderside().mm() + radius_mm(string));
    }

    private Vector tailPoint(int string) {
        int last = shape.strings().size() - 1;
        double y_mm = tail.spacing_mm() * ((double) string / last - 0.5);
        return new Vector(tail.afterLength_mm(), y_mm, tail.height_mm());
    }

    private double radius_mm(int string) {
        return shape.inputs().strings().get(string).diameter_mm() / 2;
    }

    /** From along and over the board line to along and over the body. */
    private Vector toBody(double alongBoard_mm, double y_mm, double overBoardLine_mm) {
        return new Vector(
                alongBoard_mm * slopeCos - overBoardLine_mm * slopeSin,
                y_mm,
                shape.inputs().projection_mm() + alongBoard_mm * slopeSin + overBoardLine_mm * slopeCos);
    }

    private StringThrust describe(int string, Vector thrust_N) {
        Vector bridge = bridgePoint(string);
        double downforce_N = -thrust_N.z();
        double tension_N = tension_N(string);
        double halfAngle_rad = Math.acos(Math.min(1, thrust_N.length() / (2 * tension_N)));
        double moment_Nmm = downforce_N * bridge.y() + thrust_N.y() * bridge.z();
        return new StringThrust(
                shape.strings().get(string).name(),
                Force.ofNewton(tension_N),
                Force.ofNewton(thrust_N.length()),
                Force.ofNewton(downforce_N),
                Force.ofNewton(thrust_N.y()),
                lean(thrust_N),
                Angle.ofRad(2 * halfAngle_rad),
                StringMechanics.trebleShare(moment_Nmm / downforce_N, halfFeet_mm));
    }

    private static Angle lean(Vector thrust_N) {
        return Angle.ofRad(Math.atan2(-thrust_N.x(), -thrust_N.z()));
    }
}
