package afterlength.workshop.closing;

/**
 * Something that a treatment covers.
 *
 * @param key its name in the table, kept with each tick
 * @param template key of the treatment that covers it
 * @param source an entry of the bibliography, or common practice
 */
record CoveredThing(String key, String template, HowRecorded how, String what, String source) {
    /** "Picture: the whole inside of the top, with a scale". */
    String words() {
        return how.words() + ": " + what;
    }
}
