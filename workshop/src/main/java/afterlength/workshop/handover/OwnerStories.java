package afterlength.workshop.handover;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.WordSweep;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.DiaryStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Gathers the story of a visit. Pictures are the small upright copies, made from pixels alone; of the diary what was done and noted is told, with
 * materials; words that are to stay in the shop are put out of every text.
 */
public final class OwnerStories {
    private static final String INSTEAD = "…";

    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final PhotographStore photographs;
    private final SmallPictures pictures;
    private final FindingStore findings;
    private final MeasureStore measures;
    private final DiaryStore diary;
    private final HandoverStore handovers;

    public OwnerStories(
            SettingsStore settings,
            InstrumentStore instruments,
            PhotographStore photographs,
            SmallPictures pictures,
            FindingStore findings,
            MeasureStore measures,
            DiaryStore diary,
            HandoverStore handovers) {
        this.settings = settings;
        this.instruments = instruments;
        this.photographs = photographs;
        this.pictures = pictures;
        this.findings = findings;
        this.measures = measures;
        this.diary = diary;
        this.handovers = handovers;
    }

    List<Photograph> offered(Visit visit) {
        return photographs.list(visit.id());
    }

    /** The file. */
    String html(Visit visit, Set<Long> chosen, List<String> keptOut) {
        UnaryOperator<String> clean = text -> WordSweep.without(text, keptOut, INSTEAD);
        Settings shop = settings.get();
        Instrument instrument = instruments.get(visit.instrumentId());
        Handover handover = handovers.findNow(visit.id()).orElse(null);
        return Templates.text(new OwnerStory(
                shop.shopName(),
                shop.demonstration(),
                clean.apply(instrument.name()),
                instrument.kind().words(),
                visit,
                findings.listNow(visit.id()).stream()
                        .map(finding -> clean.apply(sentence(finding)))
                        .toList(),
                days(visit, chosen, clean),
                measures.pairs(visit.id()),
                handover == null
                        ? List.of()
                        : handover.care()
                                .lines()
                                .filter(line -> !line.isBlank())
                                .map(clean)
                                .toList(),
                handover == null ? null : handover.handedOverOn()));
    }

    private static String sentence(Finding finding) {
        return finding.title()
                + (finding.place().isEmpty() ? "" : ", " + finding.place())
                + (finding.observation().isEmpty() ? "" : ": " + finding.observation());
    }

    private List<StoryDay> days(Visit visit, Set<Long> chosen, UnaryOperator<String> clean) {
        Map<LocalDate, StoryDay> days = new TreeMap<>();
        diary.listNow(visit.id()).stream()
                .filter(entry -> entry.writing().what() != DiaryEvent.STARTED)
                .forEach(entry ->
                        day(days, Days.day(entry.writing().at())).lines().add(line(entry, clean)));
        photographs.list(visit.id()).stream()
                .filter(photograph -> chosen.contains(photograph.id()))
                .forEach(photograph ->
                        day(days, Days.day(photograph.addedAt())).pictures().add(picture(photograph, clean)));
        return List.copyOf(days.values());
    }

    private static StoryDay day(Map<LocalDate, StoryDay> days, LocalDate day) {
        return days.computeIfAbsent(day, fresh -> new StoryDay(fresh, new ArrayList<>(), new ArrayList<>()));
    }

    private static StoryDay.Line line(DiaryEntry entry, UnaryOperator<String> clean) {
        String what = entry.stepName().isEmpty() ? "Note" : entry.stepName();
        return new StoryDay.Line(
                clean.apply(entry.writing().what() == DiaryEvent.NOT_DRY ? what + ": left to dry longer" : what),
                clean.apply(entry.writing().material()),
                clean.apply(entry.writing().remark()));
    }

    private StoryPicture picture(Photograph photograph, UnaryOperator<String> clean) {
        String source = "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(pictures.forPaper(photograph));
        return new StoryPicture(source, clean.apply(photograph.spoken()), clean.apply(photograph.spoken()));
    }
}
