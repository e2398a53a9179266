package afterlength.workshop.work;

/**
 * The sentence in large type.
 *
 * @param lead words before the work itself
 * @param work the work, which stands out
 * @param rest words after it
 * @param why the reason beneath
 */
record Sentence(String lead, String work, String rest, String why) {}
