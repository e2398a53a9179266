package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Queue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The search goes on behind the pages; here it is let go on step by step. */
class CardSearchTest {
    private static final String ALL_THE_SAME = " Marks can be drawn all the same, without millimetres.";

    @TempDir
    Path root;

    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private ExaminedShop shop;
    private CardSearches searches;
    private Photograph photograph;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        searches = new CardSearches(shop.originals, shop.cardPrints, shop.calibratedCameras, waiting::add);
        photograph = shop.take(RenderedPicture.JPEG, Moment.BEFORE, "front");
    }

    private CardLine line() {
        return CardLine.of(photograph, searches.of(photograph));
    }

    @Test
    void itWaitsForItsTurnAndIsBegunOnlyOnce() {
        assertThat(line().words())
                .isEqualTo("The search for a card in this picture waits for its turn. Marks can be drawn meanwhile.");
        assertThat(line().working()).isTrue();
        assertThat(waiting).hasSize(1);
        waiting.remove().run();
        assertThat(line().working()).isFalse();
        assertThat(line().words()).startsWith("Pocket card found by ");
        assertThat(waiting).isEmpty();
    }

    @Test
    void itIsStoppedAndBegunAgain() {
        searches.of(photograph).cancel();
        assertThat(line().words())
                .isEqualTo("The search is being stopped after the step it is in. Marks can be drawn meanwhile.");
        waiting.remove().run();
        assertThat(line().words()).isEqualTo("The search for a card was stopped." + ALL_THE_SAME);
        assertThat(line().again()).isTrue();
        searches.again(photograph);
        waiting.remove().run();
        assertThat(searches.findMeasured(photograph)).isPresent();
    }

    @Test
    void aMissingFileIsAnAnswer() throws Exception {
        Files.delete(shop.originals.file(photograph.sha256()));
        line();
        waiting.remove().run();
        assertThat(line().words())
                .isEqualTo(
                        "No millimetres from this picture. The file of this picture cannot be read. Bring the picture again."
                                + ALL_THE_SAME);
    }
}
