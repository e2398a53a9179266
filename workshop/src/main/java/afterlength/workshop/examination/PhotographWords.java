package afterlength.workshop.examination;

/** What a person says about a photograph. */
public record PhotographWords(Moment moment, String view, String caption) {}
