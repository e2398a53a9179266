package afterlength.craft.wood;

/** Through how many faces a plate breathes. */
public enum OpenFaces {
    /** One face varnished or sealed: the body of an instrument. */
    ONE,
    /** Bare wood on both sides, or a plate taken off. */
    BOTH
}
