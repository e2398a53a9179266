package afterlength.workshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.agreement.ReadySpan;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.work.Writing;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanStoreTest {
    private static final LocalDate SIXTEENTH = LocalDate.of(2026, 11, 16);

    @TempDir
    Path folder;

    private PlannedShop shop;

    @BeforeEach
    void open() {
        shop = new PlannedShop(folder);
    }

    @Test
    void aPlanTakenIsReadBackToTheMinute() {
        shop.inWork("Viola", SIXTEENTH, "seam", "post");
        KeptPlan taken = shop.plan();
        KeptPlan read = new PlanStore(shop.ledger).findNow().orElseThrow();
        assertThat(read).isEqualTo(taken);
        assertThat(read.pieces()).isNotEmpty();
        assertThat(read.ready()).extracting(PlannedVisit::promisedOn).containsExactly(SIXTEENTH);
    }

    @Test
    void aLaterPlanReplacesAndBothStay() {
        shop.inWork("Viola", SIXTEENTH, "seam");
        shop.plan();
        KeptPlan second = shop.plan();
        assertThat(shop.plans.kept().id()).isEqualTo(second.id());
        int kept = shop.ledger.read(handle -> handle.createQuery("SELECT count(*) FROM bench_plan")
                .mapTo(Integer.class)
                .one());
        assertThat(kept).isEqualTo(2);
    }

    @Test
    void aPlanGoesOnWithWhatWasDoneInItsTruePlace() {
        Visit viola = shop.inWork("Viola", SIXTEENTH, "seam", "post");
        shop.plan();
        shop.done(viola, 0);
        Instant done = shop.now();
        shop.pass(Duration.ofMinutes(3));
        PlannedLine waiting = shop.shown().findStep(shop.step(viola, 0).id()).orElseThrow();
        assertThat(waiting.piece().begun()).isTrue();
        assertThat(waiting.place().start()).isEqualTo(done);
        assertThat(waiting.place().end()).isBetween(done.plus(Duration.ofHours(2)), done.plus(Duration.ofMinutes(125)));
    }

    @Test
    void notDryMovesWhatFollowsAndNothingElse() {
        Visit viola = shop.inWork("Viola", SIXTEENTH, "seam");
        Visit violin = shop.inWork("Violin", SIXTEENTH, "pegs-eased");
        shop.done(viola, 0);
        shop.plan();
        Instant other = shop.shown().findReady(violin.id()).orElseThrow();
        Instant before = shop.shown().findReady(viola.id()).orElseThrow();
        shop.diary.write(Writing.notDry(shop.step(viola, 0), shop.now(), 50, "Ada"), shop.now());
        assertThat(shop.shown().findReady(viola.id()).orElseThrow()).isAfter(before.plus(Duration.ofHours(40)));
        assertThat(shop.shown().findReady(violin.id()).orElseThrow()).isEqualTo(other);
    }

    @Test
    void whatIsNewComesBehindUntilItIsPlanned() {
        Visit viola = shop.inWork("Viola", SIXTEENTH, "seam");
        shop.plan();
        Instant before = shop.shown().findReady(viola.id()).orElseThrow();
        Visit late = shop.inWork("Cello", SIXTEENTH, "board-planed");
        assertThat(shop.shown().findReady(viola.id()).orElseThrow()).isEqualTo(before);
        assertThat(shop.shown().findReady(late.id())).isPresent();
    }

    @Test
    void whoIsAwayDoesNothing() {
        shop.inWork("Viola", SIXTEENTH, "seam", "post");
        shop.inWork("Violin", SIXTEENTH, "pegs-new", "board-planed");
        LocalDate today = LocalDate.of(2026, 11, 4);
        Absence ill = new AbsenceStore(shop.ledger)
                .add(new Absence(0, null, false, "Ben", today, today.plusDays(20), "", "Ada", shop.now()));
        shop.plan();
        assertThat(shop.shown().lines())
                .filteredOn(line -> line.place().hasHands())
                .extracting(line -> line.place().hand())
                .containsOnly("Ada");
        AbsenceStore absences = new AbsenceStore(shop.ledger);
        assertThat(absences.withdraw(ill.id(), "Ada", shop.now())).isTrue();
        assertThat(absences.withdraw(ill.id(), "Ada", shop.now())).isFalse();
        assertThat(absences.listFrom(today)).isEmpty();
    }

    @Test
    void whatIsUrgentGoesFirst() {
        LocalDate tomorrow = LocalDate.of(2026, 11, 5);
        shop.inWork("First", tomorrow, "board-planed", "nut-new", "pegs-new");
        Visit second = shop.inWork("Second", tomorrow, "board-planed", "nut-new", "pegs-new");
        Visit third = shop.inWork("Third", tomorrow, "board-planed", "nut-new", "pegs-new");
        UrgencyStore urgency = new UrgencyStore(shop.ledger);
        urgency.put(third.id(), Urgency.URGENT, null, "Ada", shop.now());
        assertThat(urgency.byVisit()).isEqualTo(Map.of(third.id(), Urgency.URGENT));
        shop.plan();
        assertThat(shop.shown().findReady(third.id()).orElseThrow())
                .isBefore(shop.shown().findReady(second.id()).orElseThrow());
    }

    @Test
    void rulesOfTheBenchAreReadBack() {
        BenchRulesStore store = new BenchRulesStore(shop.ledger, shop.settings);
        BenchRules rules = new BenchRules(
                HoursText.read("Mon-Thu 08:00-12:00, 13:00-17:00\nSat 9:00-12.30"),
                Map.of("Ben", HoursText.read("Tue 10:00-14:00")),
                HoursText.read("Mon-Fri 09:00-12:00"),
                25,
                3,
                0);
        assertThat(store.get()).isEqualTo(BenchRules.fresh(shop.settings.get().closesAt()));
        store.put(rules);
        assertThat(store.get()).isEqualTo(rules);
        assertThat(rules.hours().text()).isEqualTo("Mon-Thu 08:00-12:00, 13:00-17:00\nSat 09:00-12:30");
    }

    @Test
    void aWayNotYetAgreedSaysBetweenWhichDaysItWouldBeReady() {
        shop.inWork("Viola", SIXTEENTH, "seam", "post");
        shop.plan();
        Visit asked = shop.receive("Violin");
        List<Treatment> lines = shop.propose(asked, "seam", "strings-on");
        ReadySpan span = new PlanReadyBy(shop.plans, new PracticeStore(shop.ledger))
                .of(asked, List.of(lines))
                .get(0)
                .orElseThrow();
        assertThat(span.earliest()).isAfter(LocalDate.of(2026, 11, 4));
        assertThat(span.latest()).isAfter(span.earliest());
        assertThat(shop.steps.list(asked.id())).as("nothing is kept by asking").isEmpty();
    }

    @Test
    void agreeingPlansBehindThePagesOnceSomebodyLooks() throws InterruptedException {
        shop.agreed.watch();
        shop.inWork("Viola", SIXTEENTH, "seam", "post");
        for (int n = 0; n < 300 && shop.plans.kept().isNone(); n++) {
            Thread.sleep(50);
        }
        assertThat(shop.plans.kept().because()).isEqualTo("agreed: Viola");
        assertThat(shop.plans.kept().ready()).hasSize(1);
    }
}
