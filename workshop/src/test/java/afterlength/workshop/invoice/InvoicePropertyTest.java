package afterlength.workshop.invoice;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Laws of a bill on many random ones; tax is checked against decimal arithmetic of the Java library. */
class InvoicePropertyTest {
    private static final long SEED = 9;
    private static final int BILLS = 2000;
    private static final int[] RATES = {0, 25, 55, 70, 77, 190, 200, 255, 500};

    private static List<List<InvoiceLine>> bills() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<List<InvoiceLine>> bills = new ArrayList<>();
        for (int n = 0; n < BILLS; n++) {
            List<InvoiceLine> lines = new ArrayList<>();
            int count = random.nextInt(1, 12);
            for (int line = 0; line < count; line++) {
                long minor = random.nextInt(4) == 0 ? random.nextLong(0, 200) : random.nextLong(0, 2_000_000);
                lines.add(BilledShop.line("line", minor, RATES[random.nextInt(RATES.length)]));
            }
            bills.add(lines);
        }
        return bills;
    }

    private static long exactTax(long net, int permille) {
        return BigDecimal.valueOf(net)
                .multiply(BigDecimal.valueOf(permille))
                .movePointLeft(3)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static long oracleTax(List<InvoiceLine> lines, Rounding rounding) {
        if (rounding == Rounding.PER_LINE) {
            return lines.stream()
                    .mapToLong(line -> exactTax(line.netMinor().minor(), line.taxPermille()))
                    .sum();
        }
        Map<Integer, Long> byRate = lines.stream()
                .collect(Collectors.groupingBy(
                        InvoiceLine::taxPermille,
                        Collectors.summingLong(line -> line.netMinor().minor())));
        return byRate.entrySet().stream()
                .mapToLong(rate -> exactTax(rate.getValue(), rate.getKey()))
                .sum();
    }

    @ParameterizedTest
    @EnumSource
    void linesAddUpToTheNetAndNetWithTaxIsTheTotal(Rounding rounding) {
        for (List<InvoiceLine> lines : bills()) {
            InvoiceSum sum = InvoiceSum.of(lines, rounding);
            long net = lines.stream().mapToLong(line -> line.netMinor().minor()).sum();
            assertThat(sum.net().minor()).as("seed " + SEED).isEqualTo(net);
            assertThat(sum.total().minor()).isEqualTo(net + sum.tax().minor());
            assertThat(sum.parts().stream()
                            .flatMapToLong(part -> LongStream.of(part.net().minor())))
                    .satisfies(parts ->
                            assertThat(parts.stream().mapToLong(it -> it).sum()).isEqualTo(net));
        }
    }

    @ParameterizedTest
    @EnumSource
    void taxIsWhatDecimalArithmeticSays(Rounding rounding) {
        for (List<InvoiceLine> lines : bills()) {
            assertThat(InvoiceSum.of(lines, rounding).tax().minor())
                    .as("seed " + SEED)
                    .isEqualTo(oracleTax(lines, rounding));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCreditNoteIsTheBillWithTheSignTurned(Rounding rounding) {
        for (List<InvoiceLine> lines : bills()) {
            InvoiceSum bill = InvoiceSum.of(lines, rounding);
            InvoiceSum credit =
                    InvoiceSum.of(lines.stream().map(line -> line.credited(2)).toList(), rounding);
            assertThat(credit.net()).isEqualTo(bill.net().negated());
            assertThat(credit.tax()).isEqualTo(bill.tax().negated());
            assertThat(credit.total().plus(bill.total())).isEqualTo(Money.NOTHING);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theOrderOfLinesDoesNotMatter(Rounding rounding) {
        for (List<InvoiceLine> lines : bills()) {
            List<InvoiceLine> mixed = new ArrayList<>(lines);
            Collections.shuffle(mixed, new Random(SEED));
            assertThat(InvoiceSum.of(mixed, rounding)).isEqualTo(InvoiceSum.of(lines, rounding));
        }
    }

    /** Each rounding moves tax by half a minor unit at most, so the two rules part by half a unit for each line and each rate. */
    @org.junit.jupiter.api.Test
    void theTwoRulesDifferByRoundingOnly() {
        boolean differed = false;
        for (List<InvoiceLine> lines : bills()) {
            long perLine = InvoiceSum.of(lines, Rounding.PER_LINE).tax().minor();
            long perTotal = InvoiceSum.of(lines, Rounding.PER_TOTAL).tax().minor();
            long rates = lines.stream().map(InvoiceLine::taxPermille).distinct().count();
            assertThat(2 * Math.abs(perLine - perTotal)).isLessThanOrEqualTo(lines.size() + rates);
            differed |= perLine != perTotal;
        }
        assertThat(differed).as("the rules differ on some bill").isTrue();
    }
}
