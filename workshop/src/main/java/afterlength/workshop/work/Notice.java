package afterlength.workshop.work;

import org.jspecify.annotations.Nullable;

/**
 * What just happened, said once at the top of the page it happened on.
 *
 * @param undo address that takes it back, or null
 * @param undoWords what taking it back is called
 * @param more address of a page to write more, or null
 */
record Notice(
        String words,
        @Nullable String undo,
        String undoWords,
        @Nullable String more) {
    static Notice plain(String words) {
        return new Notice(words, null, "", null);
    }
}
