package afterlength.workshop.plan;

/**
 * Something the shop could do otherwise, and the bench it would have then.
 *
 * @param words what if
 */
record Wish(String words, Bench bench) {}
