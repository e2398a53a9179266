package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.craft.units.Money;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgreementStoreTest {
    private static final LocalDate PROMISED = LocalDate.of(2026, 12, 18);

    @TempDir
    Path folder;

    private static Consent consent(OldViola shop, Set<Long> accepted) {
        return new Consent(
                shop.visit.id(),
                accepted,
                OldViola.TODAY,
                "Ilse Tamm",
                Means.TELEPHONE,
                new Money(90_000),
                PROMISED,
                "not before the concert",
                "Ines");
    }

    @Test
    void anAgreementKeepsWhatWasSaidAndThePricesOfThatMoment() {
        OldViola shop = new OldViola(folder);
        List<Treatment> lines = shop.proposeOneOfEachTier();
        Agreement kept = shop.agreements.agree(
                consent(shop, Set.of(lines.get(0).id(), lines.get(1).id())));
        PriceSpan price = shop.proposal().offers().list().get(2).sum().price();
        assertThat(shop.agreements.findNow(shop.visit.id())).contains(kept);
        assertThat(kept.scope()).isEqualTo(Scope.SOUND);
        assertThat(kept.price()).isEqualTo(price);
        assertThat(kept.ceilingMinor()).isEqualTo(new Money(90_000));
        assertThat(kept.means()).isEqualTo(Means.TELEPHONE);
        assertThat(kept.remark()).isEqualTo("not before the concert");
        assertThat(kept.writtenAt()).isEqualTo(shop.clock.instant());
        assertThat(shop.agreements.listLines(kept.id()))
                .extracting(AgreementLine::accepted)
                .containsExactly(true, true, false);
    }

    @Test
    void theExpectedPricesOfTheAcceptedLinesAddUpToTheSumBeforeTax() {
        OldViola shop = new OldViola(folder);
        List<Treatment> lines = shop.proposeOneOfEachTier();
        Agreement kept = shop.agree(lines.get(0), lines.get(2));
        Money sum = shop.agreements.listLines(kept.id()).stream()
                .filter(AgreementLine::accepted)
                .map(AgreementLine::expectedMinor)
                .reduce(Money.NOTHING, Money::plus);
        assertThat(new Tax(kept.taxPermille()).added(sum)).isEqualTo(kept.expectedMinor());
        assertThat(kept.scope()).isEqualTo(Scope.OWN_CHOICE);
    }

    @Test
    void aPromisedDayIsSetOnTheVisitToo() {
        OldViola shop = new OldViola(folder);
        shop.agreements.agree(consent(shop, Set.of(shop.propose("seam").id())));
        assertThat(shop.visits.get(shop.visit.id()).promisedOn()).isEqualTo(PROMISED);
    }

    @Test
    void aLaterWordReplacesTheEarlierOneAndBothStayReadable() {
        OldViola shop = new OldViola(folder);
        List<Treatment> lines = shop.proposeOneOfEachTier();
        Agreement first = shop.agree(lines.get(0));
        Agreement second = shop.agree(lines.get(0), lines.get(1), lines.get(2));
        assertThat(second.replaces()).isEqualTo(first.id());
        assertThat(shop.agreements.findNow(shop.visit.id())).contains(second);
        assertThat(shop.agreements.listOf(shop.visit.id())).containsExactly(second, first);
        assertThat(shop.agreements.listLines(first.id())).hasSize(3);
    }

    @Test
    void laterChangesOfTheProposalDoNotTouchWhatWasAgreed() {
        OldViola shop = new OldViola(folder);
        Treatment line = shop.propose("seam");
        Agreement kept = shop.agree(line);
        shop.treatments.putAway(line.id(), true);
        assertThat(shop.agreements.listLines(kept.id()))
                .extracting(AgreementLine::title)
                .containsExactly("Glue the open seam");
        assertThat(shop.proposal().changedSinceAgreed())
                .containsExactly("“Glue the open seam” was agreed and has been put away since.");
    }

    @Test
    void laterStagesAreToldWithinTheSameTransaction() {
        List<String> told = new ArrayList<>();
        OldViola shop = new OldViola(
                folder,
                (handle, agreement, accepted) -> told.add(agreement.scope() + " "
                        + accepted.stream().map(Treatment::template).toList()));
        List<Treatment> lines = shop.proposeOneOfEachTier();
        shop.agree(lines.get(1), lines.get(0));
        assertThat(told).containsExactly("SOUND [seam, studs-through-sound-hole]");
    }

    @Test
    void whenALaterStageFailsNothingIsKept() {
        OldViola shop = new OldViola(folder, (handle, agreement, accepted) -> {
            throw new IllegalStateException("no steps today");
        });
        Treatment line = shop.propose("seam");
        assertThatThrownBy(() -> shop.agreements.agree(consent(shop, Set.of(line.id()))))
                .hasMessage("no steps today");
        assertThat(shop.agreements.findNow(shop.visit.id())).isEmpty();
        assertThat(shop.visits.get(shop.visit.id()).promisedOn()).isNull();
    }

    @Test
    void aLineThatIsNotOfferedCannotBeAccepted() {
        OldViola shop = new OldViola(folder);
        assertThatThrownBy(() -> shop.agreements.agree(consent(shop, Set.of(99L))))
                .hasMessage("There is no treatment 99 in this shop.");
        assertThat(shop.agreements.listOf(shop.visit.id())).isEmpty();
    }

    @Test
    void toLeaveItAsItIsIsAnAgreementToo() {
        OldViola shop = new OldViola(folder);
        shop.proposeOneOfEachTier();
        Agreement kept = shop.agree();
        assertThat(kept.scope()).isEqualTo(Scope.LEAVE);
        assertThat(kept.price()).isEqualTo(PriceSpan.NOTHING);
        assertThat(AgreementWords.agreed(kept, PriceWords.of(OldViola.SETTINGS)))
                .isEqualTo("Agreed on 4 November 2026 with Ilse Tamm, by letter: it stays as it is.");
    }
}
