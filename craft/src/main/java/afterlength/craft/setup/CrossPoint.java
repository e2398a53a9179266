package afterlength.craft.setup;

/** A point in a plane across the strings: y to the treble side, z away from the belly, in millimetres. */
public record CrossPoint(double y_mm, double z_mm) {
    CrossPoint plus(double y_mm, double z_mm) {
        return new CrossPoint(this.y_mm + y_mm, this.z_mm + z_mm);
    }

    double distanceTo_mm(CrossPoint other) {
        return Math.hypot(other.y_mm - y_mm, other.z_mm - z_mm);
    }
}
