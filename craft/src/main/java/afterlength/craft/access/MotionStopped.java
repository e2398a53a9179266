package afterlength.craft.access;

/** The search was stopped before its end; nothing is known. */
public record MotionStopped() implements MotionAnswer {}
