package afterlength.workshop.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.archive.SmallShop;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.SettingsStore;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Searching by owner, instrument, number of a visit or words of a finding. */
class FindPageTest {
    @TempDir
    Path root;

    private SmallShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() throws IOException {
        shop = new SmallShop(root);
        shop.ledger.change(handle -> handle.execute("""
                INSERT INTO finding (visit_id, part, kind, place, size_reason, age, hinders_playing, gets_worse, observation,
                  interpretation, seen_at, hand, written_at)
                VALUES (?, 'ribs', 'open seam', 'neben dem ÜBERGANG, 50 %', '', 'OLD', 'NO', 'NO', 'Dust in the joint', 'Dried out',
                  '2026-03-02T09:15:00Z', 'M', '2026-03-02T09:15:00Z')
                """, shop.cello.id()));
        desk = OpenedDesk.with(new InstrumentPages(
                new Frames(new SettingsStore(shop.ledger)),
                new OwnerStore(shop.ledger),
                new InstrumentStore(shop.ledger),
                new VisitStore(shop.ledger),
                List.of()));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private List<String> found(String words) {
        return desk.get("/instruments?find=" + Addresses.encoded(words)).lines(".what");
    }

    @Test
    void ownersInstrumentsAndVisitsAreFoundByAnyPart() {
        assertThat(found("quirren")).containsExactly("Cello");
        assertThat(found("VIOLA")).containsExactly("Viola");
        assertThat(found(shop.cello.number())).containsExactly("Cello");
        assertThat(found("")).hasSize(2);
        assertThat(found("quirren viola")).isEmpty();
    }

    @Test
    void aFindingIsFoundByAnyOfItsWordsAndShown() {
        for (String words : List.of("seam", "übergang", "dried", "dust cello", "50 %")) {
            assertThat(found(words)).as(words).containsExactly("Cello");
        }
        assertThat(desk.get("/instruments?find=dust").words(".seen")).isEqualTo("open seam, ribs: Dust in the joint");
        assertThat(found("100 %"))
                .as("a sign that the database takes for anything")
                .isEmpty();
    }
}
