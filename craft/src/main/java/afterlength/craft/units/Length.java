package afterlength.craft.units;

/** A length in millimetres; may be negative where it is a difference or a coordinate. */
public record Length(double mm) {
    public Length {
        Finite.require("length", mm, "mm");
    }

    public static Length ofMm(double mm) {
        return new Length(mm);
    }
}
