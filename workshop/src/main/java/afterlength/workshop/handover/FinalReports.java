package afterlength.workshop.handover;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.AgreementLine;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.examination.CorrectionBook;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasurePair;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import afterlength.workshop.retouch.MendedLineStore;
import afterlength.workshop.setup.SetupMoment;
import afterlength.workshop.setup.SetupStore;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.DiaryStore;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Gathers a final report from all the stages before, and sets it. */
public final class FinalReports {
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final PhotographStore photographs;
    private final SmallPictures pictures;
    private final FindingStore findings;
    private final MeasureStore measures;
    private final CorrectionBook corrections;
    private final AgreementStore agreements;
    private final DiaryStore diary;
    private final SetupStore setups;
    private final MendedLineStore mendedLines;
    private final HandoverStore handovers;
    private final GluedJoints joints;
    private final Clock clock;

    public FinalReports(
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            PhotographStore photographs,
            SmallPictures pictures,
            FindingStore findings,
            MeasureStore measures,
            AgreementStore agreements,
            DiaryStore diary,
            SetupStore setups,
            MendedLineStore mendedLines,
            HandoverStore handovers,
            GluedJoints joints,
            Clock clock) {
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.photographs = photographs;
        this.pictures = pictures;
        this.findings = findings;
        this.measures = measures;
        this.corrections = new CorrectionBook(findings, measures);
        this.agreements = agreements;
        this.diary = diary;
        this.setups = setups;
        this.mendedLines = mendedLines;
        this.handovers = handovers;
        this.joints = joints;
        this.clock = clock;
    }

    /** The report as it stands now, on the paper of the shop. */
    public byte[] pdf(Visit visit) {
        FinalReport report = gather(visit);
        return PaperPdf.of(new PaperDocument(
                report.handover() == null ? "Report, work not yet ended" : "Final report",
                "en",
                report.shop().letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(
                        report.instrument().name() + ", visit " + visit.number(), Days.words(LocalDate.now(clock))),
                Templates.text(report),
                report.pictures().stream()
                        .distinct()
                        .collect(Collectors.toMap(FinalReport::nameOf, pictures::forPaper))));
    }

    private FinalReport gather(Visit visit) {
        Instrument instrument = instruments.get(visit.instrumentId());
        Optional<Agreement> agreement = agreements.findNow(visit.id());
        List<AgreementLine> lines =
                agreement.map(it -> agreements.listLines(it.id())).orElse(List.of());
        List<DiaryEntry> entries = diary.listNow(visit.id());
        List<MeasurePair> pairs = measures.pairs(visit.id());
        return new FinalReport(
                settings.get(),
                instrument,
                owners.get(instrument.ownerId()),
                visit,
                findings.listNow(visit.id()),
                agreement.orElse(null),
                lines,
                days(entries),
                materials(entries),
                joints.of(visit.id()),
                pairs,
                measuredOnce(visit, pairs),
                corrections.of(visit.id()),
                bridge(visit),
                mendedLines.listNow(visit.id()),
                photographs.list(visit.id(), Moment.BEFORE),
                photographs.list(visit.id(), Moment.DURING),
                photographs.list(visit.id(), Moment.AFTER),
                handovers.findNow(visit.id()).orElse(null));
    }

    /** A start says nothing to the owner that its end does not say better. */
    private static List<WorkDay> days(List<DiaryEntry> entries) {
        Map<LocalDate, List<WorkDay.Line>> byDay = new TreeMap<>();
        entries.stream()
                .filter(entry -> entry.writing().what() != DiaryEvent.STARTED)
                .forEach(entry -> byDay.computeIfAbsent(Days.day(entry.writing().at()), day -> new ArrayList<>())
                        .add(line(entry)));
        return byDay.entrySet().stream()
                .map(day -> new WorkDay(day.getKey(), day.getValue()))
                .toList();
    }

    private static WorkDay.Line line(DiaryEntry entry) {
        Integer minutes = entry.writing().minutes();
        String what = entry.stepName().isEmpty() ? "Note" : entry.stepName();
        return new WorkDay.Line(
                entry.writing().what() == DiaryEvent.NOT_DRY ? what + ": left to dry longer" : what,
                entry.writing().material(),
                entry.writing().remark(),
                entry.writing().hand(),
                minutes == null ? 0 : minutes);
    }

    private static List<UsedMaterial> materials(List<DiaryEntry> entries) {
        return entries.stream()
                .map(DiaryEntry::writing)
                .filter(writing -> !writing.material().isBlank())
                .map(writing -> new UsedMaterial(writing.material(), writing.reversibleWith()))
                .distinct()
                .toList();
    }

    private List<Measure> measuredOnce(Visit visit, List<MeasurePair> pairs) {
        List<Long> paired = pairs.stream()
                .flatMap(pair -> List.of(pair.before().id(), pair.after().id()).stream())
                .toList();
        return measures.listNow(visit.id()).stream()
                .filter(measure -> !paired.contains(measure.id()))
                .toList();
    }

    private @Nullable BridgeShape bridge(Visit visit) {
        Function<SetupMoment, Optional<BridgeShape>> shape = moment -> setups.findNow(visit.id(), moment)
                .map(setup -> Bridge.shape(setup.inputs()))
                .filter(BridgeShape.class::isInstance)
                .map(BridgeShape.class::cast);
        return shape.apply(SetupMoment.AFTER).orElse(null);
    }
}
