package afterlength.craft.units;

/** An angle in degrees; positive senses are said where it is used. */
public record Angle(double deg) {
    public Angle {
        Finite.require("angle", deg, "degrees");
    }

    public static Angle ofDeg(double deg) {
        return new Angle(deg);
    }

    public static Angle ofRad(double rad) {
        return new Angle(Math.toDegrees(rad));
    }

    public double rad() {
        return Math.toRadians(deg);
    }
}
