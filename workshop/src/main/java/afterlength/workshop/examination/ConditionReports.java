package afterlength.workshop.examination;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gathers a condition report from what is kept, and sets it. */
public final class ConditionReports {
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final PhotographStore photographs;
    private final FindingBook book;
    private final SittingStore sittings;
    private final MeasureStore measures;
    private final MarkStore marks;
    private final CorrectionBook corrections;
    private final SmallPictures pictures;
    private final Clock clock;

    public ConditionReports(
            OwnerStore owners,
            InstrumentStore instruments,
            PhotographStore photographs,
            FindingStore findings,
            SittingStore sittings,
            MeasureStore measures,
            MarkStore marks,
            SmallPictures pictures,
            Clock clock) {
        this.owners = owners;
        this.instruments = instruments;
        this.photographs = photographs;
        this.sittings = sittings;
        this.measures = measures;
        this.marks = marks;
        this.pictures = pictures;
        this.clock = clock;
        book = new FindingBook(findings, photographs);
        corrections = new CorrectionBook(findings, measures);
    }

    /** The report as it stands now, on the paper of the shop. */
    public byte[] pdf(Visit visit, Settings shop) {
        ConditionReport report = gather(visit, shop);
        RunningWords running = RunningWords.english(
                report.instrument().name() + ", visit " + visit.number(), Days.words(LocalDate.now(clock)));
        return PaperPdf.of(new PaperDocument(
                "Condition report",
                "en",
                shop.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                running,
                Templates.text(report),
                images(report)));
    }

    private ConditionReport gather(Visit visit, Settings shop) {
        Instrument instrument = instruments.get(visit.instrumentId());
        List<FindingEntry> findings = book.listNow(visit.id());
        return new ConditionReport(
                shop,
                instrument,
                owners.get(instrument.ownerId()),
                visit,
                byPart(findings),
                views(visit.id(), findings),
                sittings.listNow(visit.id()),
                measures.listNow(visit.id()),
                measures.pairs(visit.id()),
                marks.listNow(visit.id()),
                corrections.of(visit.id()));
    }

    /** Parts in the order of the vocabulary, then the shop's own in the order of writing. */
    private static List<ConditionReport.Part> byPart(List<FindingEntry> findings) {
        Map<String, List<FindingEntry>> byPart = new LinkedHashMap<>();
        findings.forEach(entry -> byPart.computeIfAbsent(entry.finding().part(), part -> new ArrayList<>())
                .add(entry));
        List<String> order = Vocabulary.parts();
        return byPart.entrySet().stream()
                .map(entry -> new ConditionReport.Part(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingInt(
                        part -> order.contains(part.name()) ? order.indexOf(part.name()) : order.size()))
                .toList();
    }

    private List<Photograph> views(long visitId, List<FindingEntry> findings) {
        List<Photograph> used =
                findings.stream().flatMap(entry -> entry.seenOn().stream()).toList();
        return photographs.list(visitId, Moment.BEFORE).stream()
                .filter(photograph -> !used.contains(photograph))
                .toList();
    }

    private Map<String, byte[]> images(ConditionReport report) {
        return Stream.concat(report.views().stream(), report.parts().stream().flatMap(part -> part.pictures().stream()))
                .distinct()
                .collect(Collectors.toMap(
                        ConditionReport::nameOf,
                        picture -> MarkedPicture.of(pictures.forPaper(picture), picture, report.marksOn(picture))));
    }
}
