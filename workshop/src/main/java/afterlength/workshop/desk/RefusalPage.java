package afterlength.workshop.desk;

/** What a page says when it cannot be shown. */
record RefusalPage(Frame frame, String reason) {}
