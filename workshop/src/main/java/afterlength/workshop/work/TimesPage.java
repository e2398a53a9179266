package afterlength.workshop.work;

import afterlength.workshop.agreement.PracticeTimes;
import afterlength.workshop.agreement.TemplateStep;
import afterlength.workshop.agreement.TreatmentTemplate;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Frame;
import java.util.ArrayList;
import java.util.List;

/** The practice times proposals and steps begin with ({@code docs/sources.md#shop-times}), each with its mark. */
record TimesPage(Frame frame, List<Group> groups) {
    /** One treatment with its steps. */
    record Group(String title, String counts, List<Line> lines) {}

    record Line(String step, String hands, String waiting, String mark, String address) {}

    static TimesPage of(Frame frame, PracticeTimes practice) {
        return new TimesPage(
                frame,
                TreatmentTemplates.list().stream()
                        .filter(template -> !template.steps().isEmpty())
                        .map(practice::of)
                        .map(TimesPage::group)
                        .toList());
    }

    private static Group group(TreatmentTemplate template) {
        List<Line> lines = new ArrayList<>();
        for (TemplateStep step : template.steps()) {
            lines.add(line(step, "/shelf/times/" + template.key() + "/" + (lines.size() + 1)));
        }
        return new Group(template.title(), template.counts(), lines);
    }

    private static Line line(TemplateStep step, String address) {
        return new Line(step.name(), hands(step), waiting(step), mark(step.mark()), address);
    }

    /** Hands and wait in one line. */
    static String words(TemplateStep step) {
        String waiting = waiting(step);
        return hands(step) + (waiting.isEmpty() ? "" : ", then a wait of " + waiting);
    }

    private static String hands(TemplateStep step) {
        PlannedStep planned = PlannedStep.of(step);
        return StepWords.hands(planned.handsLowMin(), planned.handsTypicalMin(), planned.handsHighMin());
    }

    private static String waiting(TemplateStep step) {
        PlannedStep planned = PlannedStep.of(step);
        return planned.waitHighH() == 0
                ? ""
                : StepWords.wait(planned.waitLowH(), planned.waitTypicalH(), planned.waitHighH());
    }

    /** The tables mark in capitals; people read small letters. */
    static String mark(String mark) {
        return mark.replace("COMMON PRACTICE", "common practice")
                .replace("READ ", "read: ")
                .replace("MEMORY", "memory")
                .replace("OWN WORDS", "own words");
    }
}
