package afterlength.craft.access;

/**
 * No way in was found. That is no proof that there is none: ways that roll the thing about its arm are not looked for.
 *
 * @param section the smallest cross-section of the part that has the least room
 * @param air_mm the most air this section has in the hole; less than nothing when it is too large, and then straight it cannot go in
 */
public record NoMotionFound(Section section, double air_mm) implements MotionAnswer {}
