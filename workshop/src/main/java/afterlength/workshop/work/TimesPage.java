package afterlength.workshop.work;

import afterlength.workshop.agreement.TemplateStep;
import afterlength.workshop.agreement.TreatmentTemplate;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Frame;
import java.util.List;

/** The practice times proposals and steps begin with ({@code docs/sources.md#shop-times}), each with its mark. */
record TimesPage(Frame frame, List<Group> groups) {
    /** One treatment with its steps. */
    record Group(String title, String counts, List<Line> lines) {}

    record Line(String step, String hands, String waiting, String mark) {}

    static TimesPage of(Frame frame) {
        return new TimesPage(
                frame,
                TreatmentTemplates.list().stream()
                        .filter(template -> !template.steps().isEmpty())
                        .map(TimesPage::group)
                        .toList());
    }

    private static Group group(TreatmentTemplate template) {
        return new Group(
                template.title(),
                template.counts(),
                template.steps().stream().map(TimesPage::line).toList());
    }

    private static Line line(TemplateStep step) {
        PlannedStep planned = PlannedStep.of(step);
        return new Line(
                step.name(),
                StepWords.hands(planned.handsLowMin(), planned.handsTypicalMin(), planned.handsHighMin()),
                planned.waitHighH() == 0
                        ? ""
                        : StepWords.wait(planned.waitLowH(), planned.waitTypicalH(), planned.waitHighH()),
                mark(step.mark()));
    }

    /** The tables mark in capitals; people read small letters. */
    static String mark(String mark) {
        return mark.replace("COMMON PRACTICE", "common practice")
                .replace("READ ", "read: ")
                .replace("MEMORY", "memory")
                .replace("OWN WORDS", "own words");
    }
}
