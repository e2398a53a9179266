package afterlength.workshop.archive;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What goes into an archive.
 *
 * @param table whose row it is about: {@code instrument} or {@code owner}; null for the whole shop
 * @param id which row
 * @param withoutPeople whether what tells of owners is erased from the copy first
 */
public record ArchiveWish(@Nullable String table, long id, boolean withoutPeople) {
    public static ArchiveWish wholeShop() {
        return new ArchiveWish(null, 0, false);
    }

    public static ArchiveWish instrument(long id, boolean withoutPeople) {
        return new ArchiveWish("instrument", id, withoutPeople);
    }

    /** Everything that is kept about one person, for that person. */
    public static ArchiveWish owner(long id) {
        return new ArchiveWish("owner", id, false);
    }

    Optional<String> findTable() {
        return Optional.ofNullable(table);
    }

    /** Only the whole shop stays in the house; everything else is made to be handed out. */
    boolean goesOut() {
        return table != null;
    }

    String words() {
        if (table == null) {
            return "whole shop";
        }
        return (table.equals("owner") ? "what is kept about one person" : "one instrument")
                + (withoutPeople ? ", without people" : "");
    }
}
