package afterlength.workshop.desk;

/**
 * How broad a line is where light falls on it and where it lies in shadow, in millimetres of the drawing. Light comes from the
 * upper left.
 */
record Pen(double light_mm, double shadow_mm) {
    Pen sized(double factor) {
        return new Pen(light_mm * factor, shadow_mm * factor);
    }
}
