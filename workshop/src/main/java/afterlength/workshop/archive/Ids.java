package afterlength.workshop.archive;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/**
 * Names of things in an archive that stay the same in every archive of the shop: an {@code arcp} address begins with the shop's own
 * number and goes on with the path inside the payload, so that a name is an absolute address and, for files, tells where they lie.
 * Source: docs/sources.md#arcp.
 */
record Ids(UUID shop) {
    String base() {
        return "arcp://uuid," + shop + "/";
    }

    String of(String path) {
        return base() + path;
    }

    String instrument(long id) {
        return of("instruments/" + id);
    }

    String owner(long id) {
        return of("people/owner-" + id);
    }

    /** A hand is known by its name only. */
    String hand(String name) {
        return of("people/hand-" + UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)));
    }

    String shopItself() {
        return of("people/shop");
    }
}
