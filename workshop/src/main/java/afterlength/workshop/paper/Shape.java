package afterlength.workshop.paper;

/** One mark on a drawing; its place is in millimetres and it can be moved but never scaled. */
public sealed interface Shape permits StraightLine, Outline, Circle, Words {
    /** The room it takes; half the breadth of its line is left out. */
    Bounds bounds();

    Shape moved(double right_mm, double up_mm);
}
