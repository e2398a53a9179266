package afterlength.workshop.plan;

/** The answers so far. */
record WishPart(String id, WishSearch search) {}
