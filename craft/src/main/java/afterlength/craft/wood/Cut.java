package afterlength.craft.wood;

/** How a plate was taken from the log, which decides the direction its width lies in. */
public enum Cut {
    /** Rings stand upright in the plate: the width runs along the radius of the log and moves least. */
    QUARTER,
    /** Rings lie flat in the plate: the width runs along the rings and moves most. */
    SLAB
}
