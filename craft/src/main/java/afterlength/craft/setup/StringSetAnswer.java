package afterlength.craft.setup;

/** What a set of strings pulls, or everything that stands in the way of saying so. */
public sealed interface StringSetAnswer permits StringSetLoad, StringSetRefused {}
