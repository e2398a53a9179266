package afterlength.workshop.handover;

/**
 * A picture inside the file itself.
 *
 * @param source a data address
 */
record StoryPicture(String source, String spoken, String caption) {}
