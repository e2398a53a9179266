package afterlength.workshop.closing;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.Consent;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LastChancePageTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-04T10:00:00Z"), ZoneOffset.UTC);
    private static final String PAGE = "/visits/1/last-chance";

    @TempDir
    Path folder;

    private TreatmentStore treatments;
    private AgreementStore agreements;
    private TickStore ticks;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        Ledger ledger = Ledger.open(ShopFolder.open(folder));
        SettingsStore settings = new SettingsStore(ledger);
        VisitStore visits = new VisitStore(ledger);
        treatments = new TreatmentStore(ledger);
        agreements = new AgreementStore(ledger, settings, CLOCK, List.of());
        ticks = new TickStore(ledger);
        visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.CELLO, "Cello", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 10, 26), "", "It buzzes.", "", "", "", null, null, 1)));
        desk = OpenedDesk.with(
                new LastChancePages(new Frames(settings), settings, visits, agreements, treatments, ticks, CLOCK));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void agree(String... templates) {
        List<Treatment> lines = Arrays.stream(templates)
                .map(key -> treatments.add(Treatment.from(TreatmentTemplates.get(key), 1), List.of()))
                .toList();
        agreements.agree(new Consent(
                1,
                lines.stream().map(Treatment::id).collect(Collectors.toSet()),
                LocalDate.of(2026, 11, 1),
                "Ilse Tamm",
                Means.IN_PERSON,
                null,
                null,
                "",
                "Ines"));
    }

    @Test
    void everyRowNamesATreatmentOfOurs() {
        assertThat(CoveredThings.list())
                .hasSizeGreaterThan(30)
                .allMatch(thing -> TreatmentTemplates.find(thing.template()).isPresent())
                .extracting(CoveredThing::key)
                .doesNotHaveDuplicates();
    }

    @Test
    void beforeAnAgreementNothingIsCovered() {
        assertThat(desk.get(PAGE).words(".answer")).isEqualTo("Nothing that is agreed covers anything.");
    }

    @Test
    void whatTheAgreedTreatmentsCoverStandsThere() {
        agree("crack-outside", "pegs-eased", "top-on");
        OpenedDesk.Answer page = desk.get(PAGE);
        assertThat(page.words(".answer")).isEqualTo("10 of 10 things are not recorded yet and will be covered.");
        assertThat(page.lines("h2"))
                .containsExactly("Before: Close the crack from outside", "Before: Close the body: glue the top on");
        assertThat(page.words()).contains("☐ Picture: the crack open and clean, before glue");
    }

    @Test
    void aTickIsKeptWithWhereItIsRecordedAndCanBeOpenedAgain() {
        agree("crack-outside");
        OpenedDesk.Answer page =
                desk.postAndFollow(PAGE, "thing", "crack-open", "note", "picture 12", "hand", "Ines", "do", "done");
        assertThat(page.words(".answer")).isEqualTo("1 of 2 things are not recorded yet and will be covered.");
        assertThat(page.words())
                .contains("✓ Picture: the crack open", "Recorded 4 Nov 2026, 10:00 by Ines: picture 12");
        desk.post(PAGE, "thing", "crack-open", "hand", "Ines", "do", "open");
        assertThat(desk.get(PAGE).words(".answer")).startsWith("2 of 2");
        assertThat(ticks.listOf(1)).extracting(Tick::done).containsExactly(true, false);
    }

    @Test
    void whenEverythingIsTickedThatIsSaid() {
        agree("crack-outside");
        desk.post(PAGE, "thing", "crack-open", "hand", "Ines", "do", "done");
        desk.post(PAGE, "thing", "crack-length", "hand", "Ines", "do", "done");
        assertThat(desk.get(PAGE).words(".answer")).isEqualTo("Everything that will be covered is recorded.");
    }

    @Test
    void aThingThatIsNotOnTheListIsRefused() {
        OpenedDesk.Answer page = desk.post(PAGE, "thing", "moon", "hand", "Ines", "do", "done");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words()).contains("“moon” is not on the list; tick one of the things that stand here.");
    }

    @Test
    void aNoteThatComesTooLateForItsFieldIsNotLost() {
        agree("crack-outside");
        desk.post(PAGE, "thing", "crack-open", "hand", "Ines", "do", "done");
        OpenedDesk.Answer page =
                desk.post(PAGE, "thing", "crack-open", "note", "the second picture 13", "hand", "", "do", "done");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words()).contains("You typed where it is recorded: the second picture 13");
    }
}
