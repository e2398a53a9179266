package afterlength.craft.setup;

/** A vector along the body (to the tail), across it (to the treble) and away from it. */
record Vector(double x, double y, double z) {
    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    Vector unit() {
        return times(1 / length());
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    double length() {
        return Math.sqrt(dot(this));
    }
}
