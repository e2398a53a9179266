package afterlength.workshop.plan;

/**
 * Why it is planned again.
 *
 * @param visitId the visit it began with, or 0
 */
record Occasion(String words, long visitId) {
    static final Occasion BY_HAND = new Occasion("Planned again by hand.", 0);
}
