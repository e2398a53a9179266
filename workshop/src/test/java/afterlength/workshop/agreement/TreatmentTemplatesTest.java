package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.examination.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TreatmentTemplatesTest {
    static List<TreatmentTemplate> templates() {
        return TreatmentTemplates.list();
    }

    private static FindingLine found(String part, String kind) {
        return new FindingLine(1, part, kind, "", null, null, false, false, "");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void everyTemplateTellsTheOwnerEverything(TreatmentTemplate template) {
        assertThat(List.of(
                        template.title(),
                        template.reason(),
                        template.ifLeft(),
                        template.reversibility(),
                        template.materials(),
                        template.caution(),
                        template.mark()))
                .noneMatch(String::isBlank);
        assertThat(template.steps()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("templates")
    void noTemplatePromisesWhatNobodyCanKnow(TreatmentTemplate template) {
        String words = (template.title()
                        + template.reason()
                        + template.ifLeft()
                        + template.reversibility()
                        + template.caution())
                .toLowerCase(Locale.ROOT);
        assertThat(words).doesNotContainPattern("\\b(safe|safely|invisible|guarantee\\w*)\\b");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void whatCannotBeUndoneSaysSoInWords(TreatmentTemplate template) {
        if (template.undoing() == Undoing.NO) {
            assertThat(template.reversibility()).containsPattern("[Cc]annot|stays");
        }
    }

    @Test
    void everyFitIsATermOfTheVocabularyOfFindings() {
        Set<Fit> known = Vocabulary.terms().stream()
                .map(term -> Fit.of(term.part() + "/" + term.words()))
                .collect(Collectors.toSet());
        assertThat(templates()).allSatisfy(template -> assertThat(known).containsAll(template.fits()));
    }

    @ParameterizedTest
    @CsvSource({
        "top, open seam (top), seam",
        "back, open seam, seam",
        "top, 'wing crack, old', crack-outside studs-through-sound-hole crack-top-off",
        "fingerboard, Loose fingerboard, board-reglued",
        "bridge, bridge missing, bridge-new",
        "varnish, chipped varnish, fill retouch-spirit retouch-oil"
    })
    void aFindingIsAnsweredByWhatFits(String part, String kind, String expected) {
        assertThat(TreatmentTemplates.listFitting(found(part, kind)))
                .extracting(TreatmentTemplate::key)
                .containsExactly(expected.split(" "));
    }

    @Test
    void whatIsBestLeftHasNoTreatment() {
        assertThat(TreatmentTemplates.listFitting(found("varnish", "crackle"))).isEmpty();
        assertThat(TreatmentTemplates.listFitting(found("top", "old repair, sound")))
                .isEmpty();
    }

    @Test
    void workDoneBeforeTheAgreementHasAPriceButNoStepsAhead() {
        Treatment examination = Treatment.from(TreatmentTemplates.get("examination"), 1);
        assertThat(TreatmentTemplates.listSteps(examination)).hasSize(5);
        assertThat(TreatmentTemplates.listStepsAhead(examination)).isEmpty();
        assertThat(TreatmentTemplates.listStepsAhead(Treatment.from(TreatmentTemplates.get("seam"), 1)))
                .extracting(TemplateStep::name)
                .containsExactly(
                        "slacken strings, clean old glue with warm water",
                        "warm, glue, clamp",
                        "clamps off, wipe, tap check");
    }

    @Test
    void anUnknownTemplateIsRefusedWithThoseThatAreKnown() {
        assertThatThrownBy(() -> TreatmentTemplates.get("polish"))
                .hasMessage("there is no treatment template 'polish'; known are "
                        + TreatmentTemplates.list().stream()
                                .map(TreatmentTemplate::key)
                                .collect(Collectors.joining(", ")));
    }
}
