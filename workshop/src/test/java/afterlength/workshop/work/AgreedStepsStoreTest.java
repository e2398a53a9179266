package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.Consent;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgreedStepsStoreTest {
    private static final Instant NOW = Instant.parse("2026-11-04T10:00:00Z");

    @TempDir
    Path folder;

    private Shop shop;
    private Visit visit;

    @BeforeEach
    void aVisit() {
        shop = new Shop(folder);
        visit = shop.receive("Viola", null);
    }

    @Test
    void acceptedTreatmentsBecomeStepsInTheOrderOfAJobWhateverTheProposalsOrder() {
        shop.agree(visit, shop.propose(visit, "pegs-eased", "seam"));
        assertThat(shop.order(visit))
                .containsExactly(
                        "slacken strings, clean old glue with warm water",
                        "warm, glue, clamp",
                        "clamps off, wipe, tap check",
                        "ease and compound existing pegs");
        Step glue = shop.step(visit, "warm, glue, clamp");
        assertThat(glue)
                .returns(10, Step::handsLowMin)
                .returns(15, Step::handsTypicalMin)
                .returns(30, Step::handsHighMin)
                .returns(4.0, Step::waitLowH)
                .returns(16.0, Step::waitTypicalH)
                .returns(24.0, Step::waitHighH)
                .returns("hot glue, clamp", Step::needs)
                .returns(true, Step::blocksInstrument);
    }

    @Test
    void whatTheOwnerDidNotAcceptMakesNoStep() {
        List<Treatment> proposed = shop.propose(visit, "seam", "pegs-eased");
        shop.agree(visit, proposed.subList(1, 2));
        assertThat(shop.order(visit)).containsExactly("ease and compound existing pegs");
    }

    @Test
    void examiningBeforeAndHandingOverAfterwardsAreNoStepsOfTheBench() {
        shop.agree(visit, shop.propose(visit, "examination", "proposal", "playing-test", "handover"));
        assertThat(shop.order(visit)).containsExactly("play all strings, wolf and buzz check, record sample");
    }

    @Test
    void aTreatmentAgreedLaterTakesItsPlaceInTheJobBeforeWhatNobodyHasBegun() {
        List<Treatment> first = shop.propose(visit, "top-off", "top-on");
        shop.agree(visit, first);
        shop.diary.write(Writing.done(shop.steps.list(visit.id()).get(0), NOW, 60, "Ada"), NOW);
        List<Treatment> found = shop.propose(visit, "bass-bar");
        shop.agree(visit, List.of(first.get(0), first.get(1), found.get(0)));
        assertThat(shop.order(visit))
                .containsExactly(
                        "photograph, mark, release seams round",
                        "clean old glue from both surfaces",
                        "remove old bar, clean",
                        "chalk-fit new bar",
                        "glue bar",
                        "shape bar",
                        "dry run, clean, place",
                        "glue in sections, clamp",
                        "clamps off, check seams");
    }

    @Test
    void whatIsNoLongerAcceptedIsLeftOutUnlessBegunAndComesBackWhenAcceptedAgain() {
        List<Treatment> both = shop.propose(visit, "seam", "pegs-eased");
        shop.agree(visit, both);
        shop.diary.write(
                Writing.started(shop.step(visit, "slacken strings, clean old glue with warm water"), NOW, "Ada"), NOW);
        shop.agree(visit, both.subList(1, 2));
        assertThat(shop.order(visit))
                .containsExactly("slacken strings, clean old glue with warm water", "ease and compound existing pegs");
        shop.agree(visit, both);
        assertThat(shop.order(visit)).hasSize(4);
    }

    @Test
    void aStepLeftOutByHandStaysOutWhenTheAgreementIsWrittenAgain() {
        List<Treatment> seam = shop.propose(visit, "seam");
        shop.agree(visit, seam);
        shop.steps.drop(shop.step(visit, "clamps off, wipe, tap check").id());
        shop.agree(visit, seam);
        assertThat(shop.order(visit))
                .doesNotContain("clamps off, wipe, tap check")
                .hasSize(2);
    }

    @Test
    void agreementAndStepsAreKeptTogetherOrNotAtAll() {
        List<Treatment> seam = shop.propose(visit, "seam");
        AgreementStore failing = new AgreementStore(
                shop.ledger, shop.settings, shop.clock, List.of(new AgreedSteps(), (handle, agreement, accepted) -> {
                    throw new IllegalStateException("the pen broke");
                }));
        Consent consent = new Consent(
                visit.id(),
                Set.of(seam.get(0).id()),
                LocalDate.of(2026, 10, 30),
                "Ilse Tamm",
                Means.IN_PERSON,
                null,
                null,
                "",
                "bench");
        assertThatThrownBy(() -> failing.agree(consent)).hasMessage("the pen broke");
        assertThat(shop.steps.list(visit.id())).isEmpty();
        assertThat(shop.agreements.findNow(visit.id())).isEmpty();
    }
}
