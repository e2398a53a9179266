package afterlength.craft.setup;

/** Inner strings placed so that the tightest string is as easy to play alone as it can be; see the design of the map of the bow. */
public record EvenPlayCrown() implements Crown {}
