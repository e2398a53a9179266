package afterlength.workshop.paper;

/** A straight line found on a page, in millimetres from its lower left corner. */
public record MeasuredLine(double fromX_mm, double fromY_mm, double toX_mm, double toY_mm, double width_mm) {
    public double length_mm() {
        return Math.hypot(toX_mm - fromX_mm, toY_mm - fromY_mm);
    }

    public boolean isLevel() {
        return Math.abs(toY_mm - fromY_mm) < 0.01;
    }

    public boolean isUpright() {
        return Math.abs(toX_mm - fromX_mm) < 0.01;
    }
}
