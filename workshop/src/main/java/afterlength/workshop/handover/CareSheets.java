package afterlength.workshop.handover;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Gathers care advice, and sets it. */
public final class CareSheets {
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final MeasureStore measures;
    private final HandoverStore handovers;
    private final Clock clock;

    public CareSheets(
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            MeasureStore measures,
            HandoverStore handovers,
            Clock clock) {
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.measures = measures;
        this.handovers = handovers;
        this.clock = clock;
    }

    public byte[] pdf(Visit visit) {
        CareSheet sheet = gather(visit);
        Handover handover = sheet.handover();
        LocalDate day = handover == null ? LocalDate.now(clock) : handover.handedOverOn();
        return PaperPdf.of(new PaperDocument(
                "Care advice",
                "en",
                sheet.shop().letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(sheet.instrument().name() + ", visit " + visit.number(), Days.words(day)),
                Templates.text(sheet),
                Map.of()));
    }

    private CareSheet gather(Visit visit) {
        Settings shop = settings.get();
        Instrument instrument = instruments.get(visit.instrumentId());
        Handover handover = handovers.findNow(visit.id()).orElse(null);
        return new CareSheet(
                shop,
                instrument,
                owners.get(instrument.ownerId()),
                visit,
                lines(handover == null ? CareAdvice.OFFERED : handover.care()),
                measures.listNow(visit.id()).stream()
                        .filter(measure -> measure.moment() == Moment.AFTER)
                        .toList(),
                handover);
    }

    private static List<String> lines(String words) {
        return words.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }
}
