package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ScopeTest {
    private static Treatment line(long id, String template) {
        Treatment from = Treatment.from(TreatmentTemplates.get(template), 1);
        return new Treatment(
                id,
                1,
                (int) id,
                from.tier(),
                from.title(),
                from.reason(),
                from.ifLeft(),
                from.undoing(),
                from.reversibility(),
                from.materials(),
                template,
                from.minutesLow(),
                from.minutesHigh(),
                from.materialMinor(),
                false,
                1);
    }

    private final List<Treatment> offered =
            List.of(line(1, "examination"), line(2, "seam"), line(3, "bass-bar"), line(4, "fill"));

    @Test
    void theNameFollowsFromTheLines() {
        assertThat(Scope.of(offered, Set.of())).isEqualTo(Scope.LEAVE);
        assertThat(Scope.of(offered, Set.of(1L, 2L))).isEqualTo(Scope.PLAYING_ORDER);
        assertThat(Scope.of(offered, Set.of(1L, 2L, 3L))).isEqualTo(Scope.SOUND);
        assertThat(Scope.of(offered, Set.of(1L, 2L, 3L, 4L))).isEqualTo(Scope.FULL);
        assertThat(Scope.of(offered, Set.of(1L, 2L, 4L))).isEqualTo(Scope.OWN_CHOICE);
        assertThat(Scope.of(offered, Set.of(2L))).isEqualTo(Scope.OWN_CHOICE);
    }

    @Test
    void toPayForTheExaminationOnlyIsToLeaveTheInstrumentAsItIs() {
        assertThat(Scope.of(offered, Set.of(1L))).isEqualTo(Scope.LEAVE);
        ScopeOffer leave = Offers.of(offered, OldViola.SETTINGS).list().get(0);
        assertThat(leave.contained()).extracting(ReckonedLine::id).containsExactly(1L);
        assertThat(leave.leftOnInstrument()).extracting(Treatment::id).containsExactly(2L);
        assertThat(leave.goesOn()).isTrue();
    }

    @Test
    void aScopeThatAddsNothingIsNamedLikeTheSmallerOne() {
        List<Treatment> small = List.of(line(2, "seam"));
        assertThat(Scope.of(small, Set.of(2L))).isEqualTo(Scope.PLAYING_ORDER);
        assertThat(Offers.of(small, OldViola.SETTINGS).list())
                .extracting(ScopeOffer::differs)
                .containsExactly(true, true, false, false);
    }
}
