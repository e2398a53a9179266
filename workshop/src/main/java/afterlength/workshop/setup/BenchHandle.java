package afterlength.workshop.setup;

import afterlength.workshop.paper.Point;

/**
 * A place of the drawing that can be taken hold of, with a finger, a mouse or the arrow keys.
 *
 * @param id stays the same from drawing to drawing
 * @param field of the form that it writes to
 * @param point which point of the template it moves, or −1
 * @param label what it is, said to those who cannot see it
 * @param value as it is now
 * @param gain how much the value grows when the handle goes up by a millimetre
 * @param step of an arrow key, and what a drag is rounded to
 * @param low the least it can be dragged to
 */
record BenchHandle(
        String id,
        String field,
        int point,
        String label,
        String unit,
        Point at,
        double value,
        double gain,
        double step,
        double low,
        double high) {

    static BenchHandle ofField(
            String id, String field, String label, Point at, double value, double gain, double step, double high) {
        return new BenchHandle(id, field, -1, label, "mm", at, value, gain, step, 0, high);
    }
}
