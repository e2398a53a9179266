package afterlength.sight.measure;

/** A photograph in which can be measured, or why not. */
public sealed interface PhotoAnswer permits MeasuredPhoto, PhotoAnswer.Refused, PhotoAnswer.Cancelled {
    /** A whole sentence for the person who took the picture. */
    record Refused(String reason) implements PhotoAnswer {}

    /** Nobody wanted it any more. */
    record Cancelled() implements PhotoAnswer {}
}
