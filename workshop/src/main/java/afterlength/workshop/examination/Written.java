package afterlength.workshop.examination;

import org.jspecify.annotations.Nullable;

/** Something written down that is never overwritten: a correction or a withdrawal is a new one that names the one it replaces. */
public interface Written {
    long id();

    @Nullable
    Long replaces();

    boolean withdrawn();
}
