package afterlength.workshop.paper;

/** A word found on a page; the place is the beginning of its baseline, from the lower left corner of the page. */
public record MeasuredWord(String word, double x_mm, double y_mm, double size_mm) {}
