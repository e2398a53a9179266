package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingStoreTest {
    private static final Instant LATER = Instant.parse("2026-03-03T10:00:00Z");

    @TempDir
    Path root;

    private ExaminedShop shop;
    private FindingStore store;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        store = shop.findings;
    }

    private Finding corrected(long id, String observation) {
        Finding before = store.get(id);
        Finding again = before.again(id, false, LATER);
        return new Finding(
                0,
                again.visitId(),
                again.replaces(),
                false,
                again.part(),
                again.kind(),
                again.place(),
                again.sizeMm(),
                again.sizePlusMinusMm(),
                again.sizeReason(),
                again.age(),
                again.hindersPlaying(),
                again.getsWorse(),
                observation,
                again.interpretation(),
                again.seenAt(),
                again.hand(),
                again.writtenAt());
    }

    private List<String> now() {
        return store.listNow(shop.visit.id()).stream().map(Finding::observation).toList();
    }

    @Test
    void aFindingIsKeptToTheLetter() {
        Photograph picture = shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        Finding written = shop.finding("top", "wing crack", "level; “clean”\nedges");
        long id = store.add(written, List.of(picture.id()));
        assertThat(store.get(id))
                .usingRecursiveComparison()
                .ignoringFields("id")
                .isEqualTo(written);
        assertThat(store.photographs(shop.visit.id()).get(id)).containsExactly(picture.id());
    }

    @Test
    void aCorrectionTakesItsPlaceInTheListAndTheFirstWordingStaysReadable() {
        long first = store.add(shop.finding("top", "wing crack", "a"), List.of());
        store.add(shop.finding("ribs", "rib crack", "b"), List.of());
        long better = store.correct(corrected(first, "a, better"), List.of()).orElseThrow();
        assertThat(now()).containsExactly("a, better", "b");
        assertThat(store.history(first).entries())
                .extracting(Finding::observation)
                .containsExactly("a", "a, better");
        assertThat(store.history(better)).isEqualTo(store.history(first));
        assertThat(store.findNow(first)).contains(store.get(better));
        assertThat(store.get(better).seenAt()).isEqualTo(ExaminedShop.NOW);
        assertThat(store.get(better).writtenAt()).isEqualTo(LATER);
    }

    @Test
    void whoCorrectsSecondIsTurnedAwayAndNothingIsOverwritten() {
        long first = store.add(shop.finding("top", "wing crack", "a"), List.of());
        store.correct(corrected(first, "one hand"), List.of());
        assertThat(store.correct(corrected(first, "other hand"), List.of())).isEmpty();
        assertThat(now()).containsExactly("one hand");
    }

    @Test
    void aWithdrawalCanBeTakenBackWithItsPictures() {
        Photograph picture = shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        long id = store.add(shop.finding("top", "wing crack", "a"), List.of(picture.id()));
        store.withdraw(id, LATER);
        store.withdraw(id, LATER);
        assertThat(now()).isEmpty();
        assertThat(store.findNow(id)).isEmpty();
        assertThat(store.history(id).entries()).hasSize(2);
        store.bringBack(id, LATER);
        store.bringBack(id, LATER);
        assertThat(now()).containsExactly("a");
        assertThat(store.history(id).entries()).hasSize(3);
        assertThat(store.photographs(shop.visit.id())
                        .get(store.history(id).latest().id()))
                .containsExactly(picture.id());
    }

    @Test
    void aWithdrawalThatWasTakenBackIsNoEarlierWording() {
        long id = store.add(shop.finding("top", "wing crack", "a"), List.of());
        store.withdraw(id, LATER);
        store.bringBack(id, LATER);
        FindingBook book = new FindingBook(store, shop.photographs);
        assertThat(book.listNow(shop.visit.id()).get(0).earlier()).isEmpty();
        store.correct(corrected(store.history(id).latest().id(), "b"), List.of());
        assertThat(book.listNow(shop.visit.id()).get(0).earlier())
                .extracting(Finding::observation)
                .containsExactly("a");
    }

    @Test
    void aPicturePutAwayIsNoLongerShownBesideAFinding() {
        Photograph picture = shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        store.add(shop.finding("top", "wing crack", "a"), List.of(picture.id()));
        FindingBook book = new FindingBook(store, shop.photographs);
        assertThat(book.listNow(shop.visit.id()).get(0).seenOn()).containsExactly(picture);
        shop.photographs.putAway(picture.id());
        assertThat(book.listNow(shop.visit.id()).get(0).seenOn()).isEmpty();
    }

    @Test
    void aCorrectionWithoutWhatItReplacesIsAMistakeOfTheProgram() {
        assertThatThrownBy(() -> store.correct(shop.finding("top", "wing crack", "a"), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a correction names the entry it replaces");
    }
}
