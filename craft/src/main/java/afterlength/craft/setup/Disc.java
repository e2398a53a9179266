package afterlength.craft.setup;

/** A string cut across, or an edge as a disc of no size, in the plane of the bow. Angles are positive when the bow rises to the treble. */
record Disc(double y_mm, double z_mm, double radius_mm) {
    /** Stands for an edge that was not measured; every angle to it is not a number. */
    static final Disc UNKNOWN = new Disc(Double.NaN, Double.NaN, 0);

    static Disc edge(double y_mm, double z_mm) {
        return new Disc(y_mm, z_mm, 0);
    }

    /** Angle of the common upper tangent: {@code φ = α - asin((r_i - r_j)/D)}, the line of centres turned by the radii. */
    static double tangent_rad(Disc bassSide, Disc trebleSide) {
        double y_mm = trebleSide.y_mm - bassSide.y_mm;
        double z_mm = trebleSide.z_mm - bassSide.z_mm;
        double distance_mm = Math.sqrt(y_mm * y_mm + z_mm * z_mm);
        return Math.atan2(z_mm, y_mm) - Math.asin((bassSide.radius_mm - trebleSide.radius_mm) / distance_mm);
    }

    /** Moved into the instrument, square to a bow lying at this angle. */
    Disc pressed(double depth_mm, double bow_rad) {
        return new Disc(y_mm + depth_mm * Math.sin(bow_rad), z_mm - depth_mm * Math.cos(bow_rad), radius_mm);
    }

    /** Signed distance of the upper side over a line of this angle that lies on another disc. */
    double over_mm(Disc other, double line_rad) {
        double across_mm = (z_mm - other.z_mm) * Math.cos(line_rad) - (y_mm - other.y_mm) * Math.sin(line_rad);
        return across_mm + radius_mm - other.radius_mm;
    }
}
