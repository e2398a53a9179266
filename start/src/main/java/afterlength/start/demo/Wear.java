package afterlength.start.demo;

/** A place where hands, chin or cloth took the varnish off: an oval of chance-frayed edge. Depth 1 is bare wood. */
record Wear(double x_mm, double y_mm, double radiusX_mm, double radiusY_mm, double depth) {

    /** 1 in the middle, 0 at the rim, negative outside. */
    double at(double atX_mm, double atY_mm) {
        double x = (atX_mm - x_mm) / radiusX_mm;
        double y = (atY_mm - y_mm) / radiusY_mm;
        return 1 - x * x - y * y;
    }
}
