package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExaminationWordsTest {
    private static Finding finding(String place, Answer hinders, Answer worse) {
        return new Finding(
                1,
                1,
                null,
                false,
                "top",
                "wing crack",
                place,
                42.0,
                0.5,
                "",
                FindingAge.OLD,
                hinders,
                worse,
                "",
                "",
                ExaminedShop.NOW,
                "M. Muster",
                ExaminedShop.NOW);
    }

    @Test
    void findingsAreCountedInASentence() {
        Finding plain = finding("bass side", Answer.NO, Answer.UNKNOWN);
        Finding hinders = finding("bass side", Answer.YES, Answer.NO);
        assertThat(ExaminationWords.answer(List.of())).isEqualTo("No finding written down yet.");
        assertThat(ExaminationWords.answer(List.of(plain))).isEqualTo("One finding.");
        assertThat(ExaminationWords.answer(List.of(plain, plain, plain, plain, plain, hinders, hinders)))
                .isEqualTo("Seven findings, two hinder playing.");
        assertThat(ExaminationWords.answer(List.of(finding("", Answer.YES, Answer.YES), plain)))
                .isEqualTo("Two findings, one hinders playing, one gets worse. One is still a draft.");
        assertThat(ExaminationWords.answer(Collections.nCopies(13, plain))).isEqualTo("13 findings.");
    }

    @Test
    void aDraftSaysWhatItLacks() {
        Finding bare = new Finding(
                1,
                1,
                null,
                false,
                "varnish",
                "stain",
                "",
                null,
                null,
                "",
                FindingAge.UNKNOWN,
                Answer.UNKNOWN,
                Answer.UNKNOWN,
                "",
                "",
                ExaminedShop.NOW,
                "M. Muster",
                ExaminedShop.NOW);
        assertThat(new FindingEntry(bare, List.of(), List.of()).draftWords())
                .isEqualTo("Draft: still without its place and its size, or the reason why it has none.");
        assertThat(finding("bass side", Answer.NO, Answer.NO).draft()).isFalse();
    }

    @Test
    void relativeWordsAreNoticedOnceEachAndWholeWordsOnly() {
        assertThat(RelativeWords.in("A small, severe crack; small", "Badly worn, not smaller than light-coloured"))
                .containsExactly("small", "severe", "badly");
        assertThat(RelativeWords.in("42 mm along the grain", "")).isEmpty();
    }

    @Test
    void theVocabularyIsReadWholeWithItsMarks() {
        assertThat(Vocabulary.terms()).hasSize(121).allSatisfy(term -> {
            assertThat(term.words()).isNotBlank();
            assertThat(term.definition()).isNotBlank();
            assertThat(term.mark()).matches("(READ|COMMON).*");
        });
        assertThat(Vocabulary.parts()).startsWith("top", "back", "ribs").doesNotHaveDuplicates();
        assertThat(Vocabulary.find("Top ", "wing Crack")).map(Term::aatId).contains("300209168");
        assertThat(Vocabulary.find("ribs", "wing crack")).isEmpty();
    }

    @Test
    void everyQuantityIsFoundByItsWordsAndItsKey() {
        for (Quantity quantity : Quantity.values()) {
            assertThat(Quantity.findByWords(" " + quantity.words().toUpperCase(java.util.Locale.ROOT)))
                    .contains(quantity);
            assertThat(Quantity.findByKey(quantity.name())).contains(quantity);
        }
        assertThat(Quantity.findByWords("tap tone")).isEmpty();
    }
}
