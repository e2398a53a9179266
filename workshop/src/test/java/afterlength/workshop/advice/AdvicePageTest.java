package afterlength.workshop.advice;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.agreement.AccessStore;
import afterlength.workshop.agreement.FindingLines;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.FindingStore;
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
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AdvicePageTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-04T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private FindingStore findings;
    private DecisionStore decisions;
    private OpenedDesk desk;
    private long crack;

    @BeforeEach
    void open() {
        Ledger ledger = Ledger.open(ShopFolder.open(folder));
        findings = new FindingStore(ledger);
        decisions = new DecisionStore(ledger);
        new VisitStore(ledger)
                .receive(new Arrival(
                        new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                        new Instrument(0, 0, InstrumentKind.VIOLIN, "Violin", "", "", "", "", null, "", "", null, 1),
                        new Visit(0, 0, "", LocalDate.of(2026, 10, 26), "", "It buzzes.", "", "", "", null, null, 1)));
        crack = findings.add(crack(null, 24.0, FindingAge.OLD), List.of());
        SettingsStore settings = new SettingsStore(ledger);
        desk = OpenedDesk.with(new AdvicePages(
                new Frames(settings),
                settings,
                findings,
                new FindingLines(findings),
                new AccessStore(ledger),
                decisions,
                CLOCK));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Finding crack(@Nullable Long replaces, double size_mm, FindingAge age) {
        return new Finding(
                0,
                1,
                replaces,
                false,
                "top",
                "wing crack",
                "treble side",
                size_mm,
                1.0,
                "",
                age,
                Answer.NO,
                Answer.NO,
                "",
                "",
                CLOCK.instant(),
                "Ines",
                CLOCK.instant());
    }

    private String address(long finding) {
        return "/visits/1/advice/" + finding;
    }

    @Test
    void everyWayStandsWithItsReasonsAndWhereTheyAreFrom() {
        OpenedDesk.Answer page = desk.get(address(crack));
        assertThat(page.words(".answer")).endsWith("nothing is decided yet.");
        assertThat(page.words())
                .contains("Leave it as it is, and write that down For it: Old, not growing and not hindering")
                .contains(
                        "Against it: A short, clean, well glued crack that does not grow may need no studs. (darnton-studs)")
                .contains("Against it: Open only when all other means have failed")
                .contains("Would speak for it, not known yet: whether it closes dry by hand");
    }

    @Test
    void aDecisionIsKeptWithItsReasonAndALaterOneReplacesIt() {
        desk.postAndFollow(
                address(crack), "treatment", "crack-outside", "reason", "It closes by hand.", "hand", "Ines");
        OpenedDesk.Answer page = desk.postAndFollow(
                address(crack), "treatment", "LEAVE", "reason", "The owner wants to wait a year.", "hand", "Ines");
        assertThat(page.words(".answer")).endsWith("decided, Leave it as it is, and write that down.");
        assertThat(page.words())
                .contains("Decided before Close the crack from outside: It closes by hand. Ines, 4 Nov 2026");
        List<Decision> kept = decisions.listOf(crack);
        assertThat(kept).extracting(Decision::treatment).containsExactly("LEAVE", "crack-outside");
        assertThat(kept.get(0).replaces()).isEqualTo(kept.get(1).id());
    }

    @Test
    void aDecisionStaysWithAFindingThatIsCorrected() {
        desk.post(address(crack), "treatment", "LEAVE", "reason", "Small.", "hand", "Ines");
        long corrected =
                findings.correct(crack(crack, 26.0, FindingAge.OLD), List.of()).orElseThrow();
        assertThat(decisions.findNow(corrected)).map(Decision::reason).contains("Small.");
        assertThat(desk.get(address(corrected)).words(".answer")).contains("decided, Leave it");
    }

    @Test
    void withoutAChoiceOrAReasonNothingIsKeptAndWhatWasTypedStays() {
        OpenedDesk.Answer page = desk.post(address(crack), "reason", "Because.", "hand", "Ines");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-treatment"))
                .isEqualTo("Nothing is chosen; choose one of the ways, to leave it is one of them.");
        assertThat(page.page().select("#f-reason").text()).isEqualTo("Because.");
        assertThat(desk.post(address(crack), "treatment", "magic", "reason", "", "hand", "Ines")
                        .words(".problem"))
                .contains("“magic” is none of the ways; choose one of those that stand here.", "The reason is empty.");
        assertThat(decisions.listOf(crack)).isEmpty();
    }

    @Test
    void anotherFactChangesWhatSpeaks() {
        long longer = findings.add(crack(null, 48.0, FindingAge.FRESH), List.of());
        assertThat(desk.get(address(longer)).words())
                .doesNotContain("may need no studs")
                .doesNotContain("Old, not growing and not hindering");
    }

    @Test
    void aFindingThatIsNotThereIsSaidSo() {
        assertThat(desk.get(address(99)).status()).isEqualTo(404);
    }
}
