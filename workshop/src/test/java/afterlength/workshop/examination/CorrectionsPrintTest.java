package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.paper.PdfRuler;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A corrected measure or finding shows both in the record; the report prints the valid one with a mark, the earlier one beneath. */
class CorrectionsPrintTest {
    private static final Instant LATER = Instant.parse("2026-03-05T14:30:00Z");

    @TempDir
    Path folder;

    private ExaminedShop shop;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(folder);
    }

    private String report() throws Exception {
        try (PdfRuler paper = PdfRuler.of(shop.reports.pdf(shop.visit, shop.settings.get()))) {
            return paper.text().replaceAll("[\\s\u00a0]+", " ");
        }
    }

    private long projection(double value) {
        return shop.measures.add(shop.measure(Moment.BEFORE, Quantity.PROJECTION, value, 0.2, 45));
    }

    private long correct(long id, double value, Instant at) {
        Measure was = shop.measures.get(id);
        Measure is = shop.measure(Moment.BEFORE, Quantity.PROJECTION, value, 0.2, 45);
        return shop.measures
                .correct(new Measure(
                        0,
                        is.visitId(),
                        was.id(),
                        false,
                        is.moment(),
                        is.quantity(),
                        is.value(),
                        is.unit(),
                        is.plusMinus(),
                        is.method(),
                        is.temperatureC(),
                        is.humidityPct(),
                        is.takenAt(),
                        is.hand(),
                        at))
                .orElseThrow();
    }

    @Test
    void aCorrectedMeasureCarriesAMarkAndItsEarlierValueStandsBeneath() throws Exception {
        correct(projection(27.0), 29.8, LATER);
        assertThat(report())
                .contains("projection 29.8 ± 0.2 mm c1 steel rule")
                .contains("c1 Corrected 5 Mar 2026, 14:30; written 2 Mar 2026, 09:15 it read: 27.0 ± 0.2 mm.")
                .contains("What carries a mark c1, c2 … was corrected");
    }

    @Test
    void everyWordingOfAMeasureThatWasCorrectedTwiceStandsThere() throws Exception {
        long second = correct(projection(27.0), 28.4, LATER);
        correct(second, 29.8, LATER.plusSeconds(3600));
        assertThat(report())
                .contains("29.8 ± 0.2 mm c1")
                .contains("Corrected 5 Mar 2026, 15:30; written 5 Mar 2026, 14:30 it read: 28.4 ± 0.2 mm.")
                .contains("Corrected 5 Mar 2026, 14:30; written 2 Mar 2026, 09:15 it read: 27.0 ± 0.2 mm.");
    }

    @Test
    void theRecordShowsBothOnItsPage() {
        correct(projection(27.0), 29.8, LATER);
        try (var desk = afterlength.workshop.desk.OpenedDesk.with(shop.rooms())) {
            assertThat(desk.get("/visits/1/measures").words())
                    .contains("29.8 ± 0.2 mm", "Earlier wording (1)", "27.0 ± 0.2 mm");
        }
    }

    @Test
    void aCorrectedFindingTellsWhatItReadBeforeAndOnlyThat() throws Exception {
        Finding first = shop.finding("top", "crack", "hairline, level");
        long id = shop.findings.add(first, List.of());
        Finding better = shop.finding("top", "wing crack", "hairline, a step of 0.2 mm");
        shop.findings.correct(better.again(id, false, LATER), List.of());
        assertThat(report())
                .contains("wing crack c1", "hairline, a step of 0.2 mm")
                .contains(
                        "c1 Corrected 5 Mar 2026, 14:30; written 2 Mar 2026, 09:15 it read: crack, top; observed hairline, level.");
    }

    @Test
    void whatWasNeverCorrectedCarriesNoMark() throws Exception {
        projection(29.8);
        assertThat(report()).contains("29.8 ± 0.2 mm steel rule").doesNotContain("c1");
    }

    @Test
    void withdrawnEntriesAreCountedAndNotPrinted() throws Exception {
        shop.measures.withdraw(projection(27.0), LATER);
        assertThat(report())
                .contains("One entry was withdrawn; it stays in the record and does not stand here.")
                .doesNotContain("27.0 ± 0.2");
    }

    @Test
    void theAirIsToldOnceForMeasuresOfOneSitting() throws Exception {
        projection(29.8);
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.SPEAKING_LENGTH, 371, 0.5, 45));
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.BODY_LENGTH, 402, 0.5, 60));
        String report = report();
        assertThat(report.split("45 % RH", -1)).hasSize(2);
        assertThat(report)
                .contains(
                        "Measured 2 March 2026 by M. Muster in air of 20 °C, 45 % RH, in which wood settles at 8.5 ± 0.5 % moisture.")
                .contains("60 % RH");
    }
}
