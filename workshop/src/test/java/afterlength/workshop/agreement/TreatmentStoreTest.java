package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.examination.Answer;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreatmentStoreTest {
    @TempDir
    Path folder;

    private OldViola shop;

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
    }

    private List<String> titles() {
        return shop.treatments.listOf(shop.visit.id()).stream()
                .map(Treatment::template)
                .toList();
    }

    @Test
    void aLineIsKeptWithEverythingItsTemplateSays() {
        Treatment kept = shop.propose("seam", shop.seam);
        TreatmentTemplate template = TreatmentTemplates.get("seam");
        assertThat(shop.treatments.get(kept.id())).isEqualTo(kept);
        assertThat(kept.title()).isEqualTo(template.title());
        assertThat(kept.ifLeft()).isEqualTo(template.ifLeft());
        assertThat(kept.undoing()).isEqualTo(template.undoing());
        assertThat(kept.minutesLow()).isEqualTo(20);
        assertThat(kept.minutesHigh()).isEqualTo(70);
    }

    @Test
    void linesStandInTheOrderTheyWereAddedUntilTheyAreMoved() {
        List<Treatment> lines = shop.proposeOneOfEachTier();
        assertThat(titles()).containsExactly("seam", "studs-through-sound-hole", "retouch-spirit");
        shop.treatments.moveEarlier(lines.get(2).id());
        assertThat(titles()).containsExactly("seam", "retouch-spirit", "studs-through-sound-hole");
        shop.treatments.moveLater(lines.get(0).id());
        assertThat(titles()).containsExactly("retouch-spirit", "seam", "studs-through-sound-hole");
    }

    @Test
    void theFirstCannotGoEarlierNorTheLastLater() {
        List<Treatment> lines = shop.proposeOneOfEachTier();
        shop.treatments.moveEarlier(lines.get(0).id());
        shop.treatments.moveLater(lines.get(2).id());
        assertThat(titles()).containsExactly("seam", "studs-through-sound-hole", "retouch-spirit");
    }

    @Test
    void whatIsPutAwayLeavesTheProposalAndComesBackToItsPlace() {
        List<Treatment> lines = shop.proposeOneOfEachTier();
        shop.treatments.putAway(lines.get(1).id(), true);
        assertThat(titles()).containsExactly("seam", "retouch-spirit");
        assertThat(shop.treatments.listPutAway(shop.visit.id()))
                .extracting(Treatment::id)
                .containsExactly(lines.get(1).id());
        shop.treatments.putAway(lines.get(1).id(), false);
        assertThat(titles()).containsExactly("seam", "studs-through-sound-hole", "retouch-spirit");
    }

    @Test
    void aLineAnswersTheFindingAsItStandsNow() {
        Treatment line = shop.propose("seam", shop.seam);
        long corrected = shop.findings
                .correct(shop.finding(shop.seam, "top", "open seam (top)", "upper bout", 90, Answer.YES), List.of())
                .orElseThrow();
        assertThat(shop.treatments.listAnswers(shop.visit.id()))
                .containsExactly(new AnsweredFinding(line.id(), corrected));
        shop.findings.withdraw(corrected, shop.clock.instant());
        assertThat(shop.treatments.listAnswers(shop.visit.id())).isEmpty();
    }

    @Test
    void twoPeopleChangingOneLineDoNotOverwriteEachOther() {
        Treatment line = shop.propose("seam", shop.seam);
        assertThat(shop.treatments.change(line, List.of(shop.crack))).isTrue();
        assertThat(shop.treatments.change(line, List.of())).isFalse();
        assertThat(shop.treatments.listAnswers(shop.visit.id()))
                .containsExactly(new AnsweredFinding(line.id(), shop.crack));
    }

    @Test
    void whatIsNotThereIsSaidSo() {
        assertThatThrownBy(() -> shop.treatments.get(99)).hasMessage("There is no treatment 99 in this shop.");
        assertThatThrownBy(() -> shop.treatments.moveLater(99)).hasMessage("There is no treatment 99 in this shop.");
    }
}
