package afterlength.workshop.work;

import afterlength.workshop.agreement.PracticeTimes;
import afterlength.workshop.agreement.TemplateStep;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentTemplates;
import java.util.List;

/** A step before it is kept: what a treatment's template, or the restorer, says of it. Figures rise from low over usual to high. */
public record PlannedStep(
        String name,
        int handsLowMin,
        int handsTypicalMin,
        int handsHighMin,
        double waitLowH,
        double waitTypicalH,
        double waitHighH,
        String needs,
        boolean blocksInstrument) {

    private static final String HANDING_OVER = "handover";

    public PlannedStep {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a step has a name");
        }
        check(name, "hands-on minutes", handsLowMin, handsTypicalMin, handsHighMin);
        check(name, "wait hours", waitLowH, waitTypicalH, waitHighH);
    }

    /**
     * The steps an accepted treatment takes at the bench. The handing over is not among them: it is a stage of its own.
     */
    static List<PlannedStep> listFor(Treatment treatment, PracticeTimes practice) {
        return treatment.template().equals(HANDING_OVER)
                ? List.of()
                : TreatmentTemplates.listStepsAhead(treatment, practice).stream()
                        .map(PlannedStep::of)
                        .toList();
    }

    static PlannedStep of(TemplateStep step) {
        return new PlannedStep(
                step.name(),
                whole(step.handsOn().low_min()),
                whole(step.handsOn().typical_min()),
                whole(step.handsOn().high_min()),
                step.waiting().low_h(),
                step.waiting().typical_h(),
                step.waiting().high_h(),
                step.needs().replace("+", ", ").replace('_', ' '),
                step.blocksInstrument());
    }

    /** As a step of a visit. */
    Step at(long id, long visitId, long treatmentId, int position) {
        return new Step(
                id,
                visitId,
                treatmentId,
                position,
                name,
                handsLowMin,
                handsTypicalMin,
                handsHighMin,
                waitLowH,
                waitTypicalH,
                waitHighH,
                needs,
                blocksInstrument,
                Step.Standing.IN_ORDER,
                1);
    }

    private static int whole(double minutes) {
        return Math.toIntExact(Math.round(minutes));
    }

    private static void check(String name, String what, double low, double typical, double high) {
        if (!(low >= 0 && typical >= low && high >= typical)) {
            throw new IllegalArgumentException("the " + what + " of “" + name + "” are " + low + ", " + typical + ", "
                    + high + "; they must not be negative and must rise from low to high");
        }
    }
}
