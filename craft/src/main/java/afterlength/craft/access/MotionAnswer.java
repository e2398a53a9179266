package afterlength.craft.access;

/** Whether a way in was found. */
public sealed interface MotionAnswer permits Motion, NoMotionFound, MotionStopped {}
