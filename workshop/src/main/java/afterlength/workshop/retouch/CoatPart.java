package afterlength.workshop.retouch;

/** How much of a colour lies in a coat, in coats of the palette. */
public record CoatPart(long colourId, double coats) {}
