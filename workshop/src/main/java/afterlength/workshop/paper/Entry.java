package afterlength.workshop.paper;

/**
 * One line of a list of figures.
 *
 * @param name what it is, such as {@code string length}
 * @param value the figure with its unit, already in words
 */
public record Entry(String name, String value) {}
