package afterlength.workshop.retouch;

/** How far a marked line stands out in its photograph, or why that is not told. */
sealed interface LineAnswer {
    record Read(LineSight sight) implements LineAnswer {}

    /** The page says it beside the mark that was chosen. */
    record Refused(String reason) implements LineAnswer {}
}
