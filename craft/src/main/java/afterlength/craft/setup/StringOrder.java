package afterlength.craft.setup;

/**
 * One string of a set.
 *
 * @param note the open note, such as G3
 */
public record StringOrder(String note, StringMass mass) {}
