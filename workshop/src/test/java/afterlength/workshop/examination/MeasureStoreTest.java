package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasureStoreTest {
    private static final Instant LATER = Instant.parse("2026-03-03T10:00:00Z");

    @TempDir
    Path root;

    private ExaminedShop shop;
    private MeasureStore store;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        store = shop.measures;
    }

    private Measure projection(Moment moment, double value_mm, double humidity_pct) {
        return shop.measure(moment, Quantity.PROJECTION, value_mm, 0.3, humidity_pct);
    }

    @Test
    void aMeasureIsKeptToTheLastDigit() {
        Measure written = shop.measure(Moment.BEFORE, Quantity.NUT_CLEARANCE_BASS, 0.45000000000000007, 0.05, 41.5);
        assertThat(store.get(store.add(written)))
                .usingRecursiveComparison()
                .ignoringFields("id")
                .isEqualTo(written);
    }

    @Test
    void whatSetUpAsksForIsFoundByItsKey() {
        store.add(projection(Moment.BEFORE, 29.8, 40));
        long second = store.add(projection(Moment.BEFORE, 29.6, 40));
        assertThat(store.findNow(shop.visit.id(), Quantity.PROJECTION, Moment.BEFORE))
                .contains(store.get(second));
        assertThat(store.findNow(shop.visit.id(), Quantity.PROJECTION, Moment.AFTER))
                .isEmpty();
        store.withdraw(second, LATER);
        assertThat(store.findNow(shop.visit.id(), Quantity.PROJECTION, Moment.BEFORE))
                .map(Measure::value)
                .contains(29.8);
    }

    @Test
    void aPairNamesItsDifferenceWithTheRootOfTheSquaresOfBothErrors() {
        store.add(projection(Moment.BEFORE, 29.8, 40));
        store.add(shop.measure(Moment.AFTER, Quantity.PROJECTION, 32.1, 0.4, 45));
        MeasurePair pair = store.pairs(shop.visit.id()).get(0);
        assertThat(pair.difference()).isCloseTo(2.3, within(1e-9));
        assertThat(pair.differencePlusMinus()).as("3, 4, 5").isCloseTo(0.5, within(1e-12));
        assertThat(pair.differs()).isTrue();
        assertThat(pair.differenceWords()).isEqualTo("2.3 ± 0.5 mm more");
        assertThat(pair.airNote()).isEmpty();
    }

    @Test
    void aDifferenceWithinItsErrorIsNotClaimed() {
        store.add(projection(Moment.BEFORE, 30.0, 40));
        store.add(projection(Moment.AFTER, 29.7, 54));
        MeasurePair pair = store.pairs(shop.visit.id()).get(0);
        assertThat(pair.differs()).isFalse();
        assertThat(pair.differenceWords()).isEqualTo("none that ± 0.4 mm can show");
        assertThat(pair.airNote())
                .isEqualTo(
                        "Measured in air 14 points damper than before work; part of the difference may be the wood's.");
    }

    @Test
    void ownWordsPairWhateverTheirCaseButNotAcrossUnits() {
        store.add(own(Moment.BEFORE, "Tap tone", "Hz"));
        store.add(own(Moment.AFTER, "tap tone", "Hz"));
        store.add(own(Moment.BEFORE, "Weight of the bow", "g"));
        store.add(own(Moment.AFTER, "Weight of the bow", "N"));
        assertThat(store.pairs(shop.visit.id())).extracting(MeasurePair::title).containsExactly("Tap tone");
    }

    private Measure own(Moment moment, String words, String unit) {
        return new Measure(
                0,
                shop.visit.id(),
                null,
                false,
                moment,
                words,
                172,
                unit,
                3,
                "by ear",
                null,
                null,
                ExaminedShop.NOW,
                "M. Muster",
                ExaminedShop.NOW);
    }

    @Test
    void aCorrectionKeepsTheTimeOfMeasuring() {
        long id = store.add(projection(Moment.BEFORE, 298, 40));
        Measure better = projection(Moment.BEFORE, 29.8, 40).again(id, false, LATER);
        store.correct(better);
        assertThat(store.correct(better))
                .as("a second correction of the same entry")
                .isEmpty();
        assertThat(store.listNow(shop.visit.id())).extracting(Measure::value).containsExactly(29.8);
        assertThat(store.history(id).earlier()).extracting(Measure::value).containsExactly(298.0);
        assertThat(store.history(id).latest().takenAt()).isEqualTo(ExaminedShop.NOW);
        assertThat(store.history(id).latest().writtenAt()).isEqualTo(LATER);
    }

    @Test
    void theAirReadLastIsRemembered() {
        assertThat(shop.roomAir.findSince(Instant.EPOCH)).isEmpty();
        store.add(projection(Moment.BEFORE, 29.8, 40));
        assertThat(shop.roomAir.findSince(ExaminedShop.NOW)).contains(new Air(20.0, 40.0));
        assertThat(shop.roomAir.findSince(LATER)).as("yesterday's air").isEmpty();
    }
}
