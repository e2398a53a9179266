package afterlength.workshop.privacy;

import afterlength.sight.picture.OutgoingPicture;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.WordSweep;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * Erases what a shop keeps about an owner, docs/decisions/0019: the owner's entry, who brought, agreed, received and was billed, the insured value,
 * the person's words in any text, and what cameras noted in the photographs of their instruments. The instruments, what was seen,
 * measured and done stay. Backups are removed when asked for, otherwise named.
 */
public final class Eraser {
    /** How the folder of a copy begins from which an archive is made. */
    public static final String COPY_FOR_ARCHIVE = "archive-making-";

    private final ShopFolder folder;
    private final Ledger ledger;
    private final Photographs originals;

    public Eraser(ShopFolder folder, Ledger ledger) {
        this.folder = folder;
        this.ledger = ledger;
        originals = new Photographs(folder);
    }

    /** Names of the backups in the shop's folder. */
    public List<String> backups() {
        return names(folder.backups());
    }

    /**
     * Erases; cannot be taken back.
     *
     * @param words what else is to go from every text
     */
    public Erased erase(long ownerId, List<String> words, boolean backupsToo, String hand, Instant now) {
        List<String> unreadable = new ArrayList<>();
        Map<String, String> pictures = freed(picturesOf(ownerId), unreadable);
        int texts = ledger.erase(handle -> {
            int swept = WordSweep.replace(handle, words);
            eraseOwner(handle, ownerId);
            pictures.forEach((was, is) -> rename(handle, ownerId, was, is));
            note(handle, ownerId, swept, pictures.size(), hand, now);
            return swept;
        });
        pictures.keySet().forEach(this::removeWhenUnused);
        removeLeftovers();
        if (backupsToo) {
            backups().forEach(name -> remove(folder.backups().resolve(name)));
        }
        return new Erased(texts, pictures.size(), unreadable, backups());
    }

    private static void eraseOwner(Handle handle, long id) {
        update(
                handle,
                id,
                "UPDATE owner SET name = 'Erased owner ' || id, email = '', phone = '', address = '', remark = '', version = version + 1 WHERE id = :owner");
        String visits =
                "SELECT v.id FROM visit v JOIN instrument i ON i.id = v.instrument_id WHERE i.owner_id = :owner";
        update(
                handle,
                id,
                "UPDATE visit SET brought_by = '', insured_value_minor = NULL, version = version + 1 WHERE id IN ("
                        + visits + ")");
        update(handle, id, "UPDATE agreement SET agreed_by = '[erased]' WHERE visit_id IN (" + visits + ")");
        update(handle, id, "UPDATE handover SET received_by = '[erased]' WHERE visit_id IN (" + visits + ")");
        update(handle, id, "UPDATE invoice SET buyer = '[erased]' WHERE visit_id IN (" + visits + ")");
    }

    private static void update(Handle handle, long ownerId, String sql) {
        handle.createUpdate(sql).bind("owner", ownerId).execute();
    }

    private static void note(Handle handle, long ownerId, int texts, int pictures, String hand, Instant now) {
        handle.createUpdate(
                        "INSERT INTO erasing (owner_id, texts, pictures, erased_at, hand) VALUES (:owner, :texts, :pictures, :at, :hand)")
                .bind("owner", ownerId)
                .bind("texts", texts)
                .bind("pictures", pictures)
                .bind("at", now)
                .bind("hand", hand)
                .execute();
    }

    /** Names of the files of all pictures of this owner's instruments. */
    private List<String> picturesOf(long ownerId) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT DISTINCT p.sha256 FROM photograph p JOIN visit v ON v.id = p.visit_id
                        JOIN instrument i ON i.id = v.instrument_id WHERE i.owner_id = :owner ORDER BY p.sha256
                        """)
                .bind("owner", ownerId)
                .mapTo(String.class)
                .list());
    }

    /** Keeps each picture anew without what its camera noted; answers the new name by the old one. */
    private Map<String, String> freed(List<String> names, List<String> unreadable) {
        Map<String, String> freed = new LinkedHashMap<>();
        for (String name : names) {
            try {
                byte[] out = OutgoingPicture.of(Files.readAllBytes(originals.file(name)));
                String fresh = originals.keep(new ByteArrayInputStream(out));
                if (!fresh.equals(name)) {
                    freed.put(name, fresh);
                }
            } catch (NoSuchFileException | IllegalArgumentException broken) {
                unreadable.add(name);
            } catch (IOException full) {
                throw new UncheckedIOException("the pictures cannot be written anew; nothing was erased", full);
            }
        }
        return freed;
    }

    private static void rename(Handle handle, long ownerId, String was, String is) {
        handle.createUpdate("""
                        UPDATE photograph SET sha256 = :is WHERE sha256 = :was AND visit_id IN
                          (SELECT v.id FROM visit v JOIN instrument i ON i.id = v.instrument_id WHERE i.owner_id = :owner)
                        """)
                .bind("is", is)
                .bind("was", was)
                .bind("owner", ownerId)
                .execute();
    }

    /** The same file may show an instrument of somebody else. */
    private void removeWhenUnused(String name) {
        boolean used = ledger.read(handle -> handle.createQuery("SELECT count(*) FROM photograph WHERE sha256 = :name")
                        .bind("name", name)
                        .mapTo(Integer.class)
                        .one())
                > 0;
        if (!used) {
            remove(originals.file(name));
            names(folder.thumbnails()).stream()
                    .filter(small -> small.startsWith(name))
                    .forEach(small -> remove(folder.thumbnails().resolve(small)));
        }
    }

    /** What a program that was killed left half-made: pictures coming in, copies for an archive. */
    private void removeLeftovers() {
        for (Path place : List.of(folder.root(), folder.photographs(), folder.thumbnails())) {
            names(place).stream()
                    .filter(name -> name.endsWith(".part") || name.startsWith(COPY_FOR_ARCHIVE))
                    .forEach(name -> removeAll(place.resolve(name)));
        }
    }

    private static void removeAll(Path root) {
        try (Stream<Path> files = Files.walk(root)) {
            files.sorted(Comparator.reverseOrder()).forEach(Eraser::remove);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<String> names(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException broken) {
            throw new UncheckedIOException("the file " + file + " cannot be removed", broken);
        }
    }
}
