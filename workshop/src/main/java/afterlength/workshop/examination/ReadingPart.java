package afterlength.workshop.examination;

/**
 * What is said of the points as they are being set.
 *
 * @param value the size with its ±, empty without one
 * @param words what follows it, or what is said instead
 */
record ReadingPart(String value, String words, String reason) {}
