package afterlength.workshop.agreement;

import java.util.List;
import java.util.Optional;

/** The shop's own times over those of the tables; they count for what is proposed and agreed from then on. */
public record PracticeTimes(List<PracticeTime> own) {
    public static final PracticeTimes COMMON = new PracticeTimes(List.of());

    public PracticeTimes {
        own = List.copyOf(own);
    }

    public Optional<PracticeTime> find(TreatmentTemplate template, TemplateStep step) {
        return own.stream().filter(time -> time.isOf(template, step)).findFirst();
    }

    /** A template with the shop's own times in it. */
    public TreatmentTemplate of(TreatmentTemplate template) {
        return own.stream().noneMatch(time -> time.template().equals(template.key()))
                ? template
                : template.taking(template.steps().stream()
                        .map(step -> of(template, step))
                        .toList());
    }

    private TemplateStep of(TreatmentTemplate template, TemplateStep step) {
        return find(template, step)
                .map(time -> new TemplateStep(
                        step.name(),
                        time.handsOn(),
                        time.waiting(),
                        step.needs(),
                        step.blocksInstrument(),
                        "the shop's own"))
                .orElse(step);
    }
}
