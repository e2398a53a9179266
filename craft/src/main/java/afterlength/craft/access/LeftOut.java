package afterlength.craft.access;

/** A cleat that would have lain here, and what it would have lain on. */
public record LeftOut(double along_mm, KeepOff.Kind because) {}
