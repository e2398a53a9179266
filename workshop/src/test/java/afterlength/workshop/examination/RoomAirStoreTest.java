package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The air offered for a measure: read by hand within the hour, else by a logger, else by hand earlier in the day. */
class RoomAirStoreTest {
    private static final Air LOGGED = new Air(20.4, 46.0);

    @TempDir
    Path folder;

    private ExaminedShop shop;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(folder);
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.BODY_LENGTH, 1, 0.1, 50));
    }

    @Test
    void theHandWithinTheHourThenTheLoggerThenTheHand() {
        Instant now = ExaminedShop.NOW;
        Instant midnight = now.minus(Duration.ofHours(12));
        RoomAir without = new RoomAir(shop.ledger);
        RoomAir withLogger = new RoomAir(shop.ledger, moment -> Optional.of(LOGGED));
        Air typed = without.findSince(midnight).orElseThrow();
        assertThat(typed.humidity_pct()).isEqualTo(50);
        assertThat(withLogger.find(now, midnight)).contains(typed);
        Instant later = now.plus(Duration.ofHours(2));
        assertThat(withLogger.find(later, midnight)).contains(LOGGED);
        assertThat(without.find(later, midnight)).contains(typed);
    }
}
