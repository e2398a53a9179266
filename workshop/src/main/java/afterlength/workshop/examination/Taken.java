package afterlength.workshop.examination;

/** What became of one file that was brought. */
public sealed interface Taken {
    String fileName();

    /** It is among the photographs of the visit now. */
    record Kept(String fileName, Photograph photograph) implements Taken {}

    /** The very same bytes were here already; if they had been put away, they are in view again. */
    record HereAlready(String fileName, Photograph photograph) implements Taken {}

    /** It was not taken; nothing of it was kept. */
    record Refused(String fileName, String reason) implements Taken {}
}
