package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.craft.units.Money;
import afterlength.workshop.ledger.Settings;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Money of a proposal: whole minor units, exact sums, one rounding of tax, ranges rounded outward, the same answer every time. */
class PricePropertyTest {
    private static final List<Tier> TIERS = List.of(Tier.values());

    private final List<TreatmentTemplate> templates = TreatmentTemplates.list();

    private List<Treatment> proposal(SplittableRandom random) {
        List<Treatment> lines = new ArrayList<>();
        for (int id = 1, most = random.nextInt(1, 12); id <= most; id++) {
            lines.add(line(id, templates.get(random.nextInt(templates.size())), random));
        }
        return lines;
    }

    private static Treatment line(int id, TreatmentTemplate template, SplittableRandom random) {
        int low_min = random.nextInt(0, 300);
        return new Treatment(
                id,
                1,
                id,
                TIERS.get(random.nextInt(TIERS.size())),
                template.title(),
                "r",
                "l",
                template.undoing(),
                "v",
                "",
                template.key(),
                low_min,
                low_min + random.nextInt(0, 600),
                new Money(random.nextInt(0, 20_000)),
                false,
                1);
    }

    private static Settings settings(SplittableRandom random) {
        return new Settings(
                "s",
                "",
                List.of("h"),
                "EUR",
                new Money(random.nextInt(0, 15_000)),
                random.nextInt(0, 300),
                false,
                java.time.LocalTime.of(17, 30),
                false);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void expectedPricesOfLinesAddUpAndTaxIsReckonedOnceOnTheirSum(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Settings settings = settings(random);
        for (ScopeOffer offer : Offers.of(proposal(random), settings).list()) {
            long sum = offer.contained().stream()
                    .mapToLong(line -> line.price().expected().minor())
                    .sum();
            assertThat(offer.sum().expectedBeforeTax().minor()).isEqualTo(sum);
            assertThat(offer.sum().tax().minor()).isEqualTo(taxOf(sum, settings.taxPermille()));
            assertThat(offer.sum().price().expected().minor()).isEqualTo(sum + taxOf(sum, settings.taxPermille()));
        }
    }

    /** The slow way: a decimal fraction, rounded half up. */
    private static long taxOf(long minor, int permille) {
        return new BigDecimal(minor)
                .multiply(new BigDecimal(permille))
                .movePointLeft(3)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void rangesHoldTheExpectedPriceAndStandOnFullFives(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Settings settings = settings(random);
        List<ReckonedLine> lines = Offers.of(proposal(random), settings).lines();
        List<PriceSpan> spans =
                new ArrayList<>(lines.stream().map(ReckonedLine::price).toList());
        spans.add(Reckoning.of(lines, settings).price());
        for (PriceSpan span : spans) {
            assertThat(span.expected().minor())
                    .isBetween(span.low().minor(), span.high().minor());
            assertThat(span.low().minor() % 500).isZero();
            assertThat(span.high().minor() % 500).isZero();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void everyWayContainsTheOneBeforeAndCostsNoLess(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<ScopeOffer> offers = Offers.of(proposal(random), settings(random)).list();
        assertThat(offers)
                .extracting(ScopeOffer::scope)
                .containsExactly(Scope.LEAVE, Scope.PLAYING_ORDER, Scope.SOUND, Scope.FULL);
        for (int n = 1; n < offers.size(); n++) {
            ScopeOffer less = offers.get(n - 1);
            ScopeOffer more = offers.get(n);
            assertThat(more.contained()).containsAll(less.contained());
            assertThat(more.sum().price().low().minor())
                    .isGreaterThanOrEqualTo(less.sum().price().low().minor());
            assertThat(more.sum().price().high().minor())
                    .isGreaterThanOrEqualTo(less.sum().price().high().minor());
            assertThat(more.sum().work().low_min())
                    .isGreaterThanOrEqualTo(less.sum().work().low_min());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33})
    void theRangeOfTheWholeIsNarrowerThanTheLinesEndToEnd(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<ReckonedLine> lines = Offers.of(proposal(random), settings(random)).lines();
        WorkSpan whole = Reckoning.of(lines, OldViola.SETTINGS).work();
        assertThat(whole.low_min())
                .isGreaterThanOrEqualTo(
                        lines.stream().mapToLong(line -> line.work().low_min()).sum());
        assertThat(whole.high_min())
                .isLessThanOrEqualTo(
                        lines.stream().mapToLong(line -> line.work().high_min()).sum());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {41, 42})
    void theSameLinesComeToTheSamePriceWhateverTheirOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Treatment> lines = proposal(random);
        List<Treatment> reversed = new ArrayList<>(lines);
        Collections.reverse(reversed);
        Set<Long> all = lines.stream().map(Treatment::id).collect(Collectors.toSet());
        assertThat(Offers.of(reversed, OldViola.SETTINGS).sumOf(all).price())
                .isEqualTo(Offers.of(lines, OldViola.SETTINGS).sumOf(all).price());
    }

    @Test
    void nothingCostsNothing() {
        Reckoning nothing = Offers.of(List.of(), OldViola.SETTINGS).sumOf(Set.of());
        assertThat(nothing.price()).isEqualTo(PriceSpan.NOTHING);
        assertThat(nothing.work()).isEqualTo(WorkSpan.NOTHING);
    }

    @Test
    void taxRoundsHalfUpAndRefusesRatesThatAreNone() {
        assertThat(new Tax(190).on(new Money(10_000))).isEqualTo(new Money(1_900));
        assertThat(new Tax(55).on(new Money(100))).isEqualTo(new Money(6)); // 5.5 rounds up
        assertThat(new Tax(190).withWords()).isEqualTo("with 19 % tax");
        assertThat(new Tax(55).withWords()).isEqualTo("with 5.5 % tax");
        assertThat(new Tax(0).withWords()).isEqualTo("no tax added");
        assertThatThrownBy(() -> new Tax(1001))
                .hasMessage("tax is 1001 tenths of a per cent; allowed is 0 to 1000, that is 0 to 100 %");
    }

    @Test
    void priceAndHoursAreWrittenForPeople() {
        PriceWords words = PriceWords.of(OldViola.SETTINGS);
        assertThat(words.range(new PriceSpan(new Money(100_500), new Money(134_463), new Money(170_500))))
                .isEqualTo("EUR\u00a01\u202f005\u00a0–\u00a01\u202f705");
        assertThat(words.range(PriceSpan.NOTHING)).isEqualTo("EUR\u00a00");
        assertThat(PriceWords.hours(new WorkSpan(17, 20, 43))).isEqualTo("15 min – 45 min");
        assertThat(PriceWords.hours(new WorkSpan(50, 80, 91))).isEqualTo("45 min – 1 h 45");
        assertThat(PriceWords.hours(new WorkSpan(725, 900, 1261))).isEqualTo("12 – 22 h");
    }
}
