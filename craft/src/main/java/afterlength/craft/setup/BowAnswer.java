package afterlength.craft.setup;

/** How each string can be played alone, or why that cannot be said. */
public sealed interface BowAnswer permits BowReading, BowRefused {}
