package afterlength.workshop.archive;

import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.Vocabulary;
import afterlength.workshop.handover.Handover;
import afterlength.workshop.handover.HandoverStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * An instrument as a Linked Art object: what it is and whose, what was measured with its ±, what was seen and by whom, what was
 * done with which materials, its pictures, and how it changed hands. Tells what holds; earlier wordings stand in the table files.
 * A crack has no class of its own in this profile of CIDOC CRM, so that a finding is a kind assigned to the instrument by whoever
 * examined it.
 */
final class InstrumentRecord {
    private final Ids ids;
    private final FindingStore findings;
    private final MeasureStore measures;
    private final PhotographStore photographs;
    private final DiaryStore diary;
    private final HandoverStore handovers;
    private final Function<Photograph, String> pathOf;

    InstrumentRecord(Ids ids, Ledger ledger, Function<Photograph, String> pathOf) {
        this.ids = ids;
        this.pathOf = pathOf;
        findings = new FindingStore(ledger);
        measures = new MeasureStore(ledger);
        photographs = new PhotographStore(ledger);
        diary = new DiaryStore(ledger);
        handovers = new HandoverStore(ledger);
    }

    Map<String, Object> object(Instrument instrument, Owner owner, List<Visit> visits) {
        return Json.object(
                "@context",
                Art.CONTEXT,
                "id",
                ids.instrument(instrument.id()),
                "type",
                "HumanMadeObject",
                "_label",
                instrument.name(),
                "classified_as",
                List.of(Art.MUSICAL_INSTRUMENT, Art.ownType(instrument.kind().words())),
                "identified_by",
                concat(List.of(
                        Stream.of(Art.name(instrument.name())),
                        visits.stream().map(visit -> Art.identifier(visit.number(), Art.LOCAL_NUMBER)))),
                "current_owner",
                List.of(Art.person(ids.owner(owner.id()), owner.name())),
                "referred_to_by",
                statements(instrument),
                "dimension",
                each(visits, visit -> measures.listNow(visit.id()).stream().map(this::dimension)),
                "attributed_by",
                each(visits, visit -> findings.listNow(visit.id()).stream().map(this::assessment)),
                "modified_by",
                each(
                        visits,
                        visit -> diary.listNow(visit.id()).stream()
                                .filter(entry -> entry.writing().what() == DiaryEvent.DONE)
                                .map(this::modification)),
                "representation",
                each(visits, visit -> photographs.list(visit.id()).stream().map(this::picture)));
    }

    /** Receipt and handover of every visit, as changes of custody between owner and shop. */
    Map<String, Object> custody(Instrument instrument, Owner owner, Visit visit, String shopName) {
        Map<String, Object> person = Art.person(ids.owner(owner.id()), owner.name());
        Map<String, Object> shop = Json.object("id", ids.shopItself(), "type", "Group", "_label", shopName);
        List<Object> transfers = new ArrayList<>();
        transfers.add(transfer(instrument, person, shop, Art.on(visit.receivedOn()), "Received for examination"));
        Optional<Handover> handover = handovers.findNow(visit.id());
        handover.ifPresent(
                given -> transfers.add(transfer(instrument, shop, person, Art.on(given.handedOverOn()), "Given back")));
        return Json.object(
                "@context",
                Art.CONTEXT,
                "id",
                ids.of("instruments/" + instrument.id() + "/visit-" + visit.number() + "/custody"),
                "type",
                "Activity",
                "_label",
                "Visit " + visit.number() + " of " + instrument.name(),
                "classified_as",
                List.of(Art.type("300055863", "Provenance Activity")),
                "part",
                transfers);
    }

    private Map<String, Object> transfer(
            Instrument instrument,
            Map<String, Object> from,
            Map<String, Object> to,
            Map<String, Object> when,
            String label) {
        return Json.object(
                "type",
                "TransferOfCustody",
                "_label",
                label,
                "transferred_custody_of",
                List.of(Json.object(
                        "id", ids.instrument(instrument.id()), "type", "HumanMadeObject", "_label", instrument.name())),
                "transferred_custody_from",
                List.of(from),
                "transferred_custody_to",
                List.of(to),
                "timespan",
                when);
    }

    private static List<Object> statements(Instrument instrument) {
        return concat(List.of(
                worded(instrument.labelWords(), "Label, as it reads: "),
                worded(instrument.marksWords(), "Marks: "),
                worded(instrument.madeWords(), "Made: "),
                worded(instrument.storyTold(), "Story as told: "),
                worded(instrument.storyDocumented(), "What papers show: ")));
    }

    private static Stream<Map<String, Object>> worded(String words, String before) {
        return words.isBlank() ? Stream.of() : Stream.of(Art.note(before + words));
    }

    private Map<String, Object> dimension(Measure measure) {
        return Json.object(
                "type",
                "Dimension",
                "_label",
                measure.title() + ", " + measure.moment().words(),
                "classified_as",
                List.of(Art.ownType(measure.title())),
                "value",
                measure.value(),
                "lower_value_limit",
                measure.value() - measure.plusMinus(),
                "upper_value_limit",
                measure.value() + measure.plusMinus(),
                "unit",
                Art.unit(measure.unit()),
                "assigned_by",
                List.of(measuring(measure)));
    }

    private Map<String, Object> measuring(Measure measure) {
        Double temperature_C = measure.temperatureC();
        Double humidity_pct = measure.humidityPct();
        String air = (temperature_C == null ? "" : temperature_C + " °C ")
                + (humidity_pct == null ? "" : humidity_pct + " % relative humidity");
        return Json.object(
                "type",
                "AttributeAssignment",
                "_label",
                measure.title() + " measured",
                "carried_out_by",
                List.of(hand(measure.hand())),
                "technique",
                List.of(Art.MEASURING),
                "timespan",
                Art.at(measure.takenAt()),
                "referred_to_by",
                concat(List.of(worded(measure.method(), "Method: "), worded(air.strip(), "Air: "))));
    }

    private Map<String, Object> assessment(Finding finding) {
        String size = finding.sizeMm() == null ? "" : finding.sizeMm() + " ± " + finding.sizePlusMinusMm() + " mm";
        return Json.object(
                "type",
                "AttributeAssignment",
                "_label",
                finding.title(),
                "assigned_property",
                "classified_as",
                "carried_out_by",
                List.of(hand(finding.hand())),
                "technique",
                List.of(Art.EXAMINATION),
                "timespan",
                Art.at(finding.seenAt()),
                "assigned",
                List.of(kindOf(finding)),
                "referred_to_by",
                concat(List.of(
                        finding.observation().isBlank()
                                ? Stream.of()
                                : Stream.of(Art.statement(finding.observation(), "300435425", "Condition Statement")),
                        worded(finding.place(), "Place: "),
                        worded(size, "Size: "),
                        worded(finding.interpretation(), "Taken to mean: "))));
    }

    private static Map<String, Object> kindOf(Finding finding) {
        return Vocabulary.find(finding.part(), finding.kind())
                .filter(term -> !term.aatId().isBlank())
                .map(term -> Art.type(term.aatId(), finding.title()))
                .orElseGet(() -> Art.ownType(finding.title()));
    }

    private Map<String, Object> modification(DiaryEntry entry) {
        Writing done = entry.writing();
        String material =
                done.material() + (done.reversibleWith().isBlank() ? "" : "; undone with: " + done.reversibleWith());
        return Json.object(
                "type",
                "Modification",
                "_label",
                entry.stepName(),
                "carried_out_by",
                List.of(hand(done.hand())),
                "timespan",
                Art.at(done.at()),
                "referred_to_by",
                concat(List.of(
                        done.material().isBlank()
                                ? Stream.of()
                                : Stream.of(Art.statement(material, "300435429", "Materials Statement")),
                        worded(done.remark(), ""))));
    }

    private Map<String, Object> picture(Photograph photograph) {
        return Json.object(
                "type",
                "VisualItem",
                "_label",
                photograph.spoken(),
                "digitally_shown_by",
                List.of(Json.object(
                        "id",
                        ids.of("photographs/" + photograph.id()),
                        "type",
                        "DigitalObject",
                        "_label",
                        photograph.title(),
                        "format",
                        photograph.mediaType(),
                        "access_point",
                        List.of(Json.object("id", ids.of(pathOf.apply(photograph)), "type", "DigitalObject")))));
    }

    private Map<String, Object> hand(String name) {
        return Art.person(ids.hand(name), name);
    }

    private static List<Object> each(List<Visit> visits, Function<Visit, Stream<Map<String, Object>>> of) {
        return visits.stream().flatMap(of).map(Object.class::cast).toList();
    }

    private static List<Object> concat(List<Stream<Map<String, Object>>> streams) {
        return streams.stream()
                .flatMap(stream -> stream)
                .map(Object.class::cast)
                .toList();
    }
}
