package afterlength.workshop.paper;

/** Which end of the words stands at their point. */
public enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double partBefore;

    Anchor(double partBefore) {
        this.partBefore = partBefore;
    }

    /** Part of the width that lies to the left of the point. */
    double partBefore() {
        return partBefore;
    }
}
