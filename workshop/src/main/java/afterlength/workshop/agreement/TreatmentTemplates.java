package afterlength.workshop.agreement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The treatments this shop knows how to propose, in the order in which a job goes. Read once from the tables beside us. */
public final class TreatmentTemplates {
    private static final Map<String, TreatmentTemplate> KNOWN = read();

    private TreatmentTemplates() {}

    public static List<TreatmentTemplate> list() {
        return List.copyOf(KNOWN.values());
    }

    public static Optional<TreatmentTemplate> find(String key) {
        return Optional.ofNullable(KNOWN.get(key));
    }

    public static TreatmentTemplate get(String key) {
        return find(key)
                .orElseThrow(() -> new IllegalArgumentException("there is no treatment template '" + key
                        + "'; known are " + String.join(", ", KNOWN.keySet())));
    }

    /** The templates that answer a finding, in the order of the job. */
    public static List<TreatmentTemplate> listFitting(FindingLine finding) {
        return list().stream().filter(template -> template.fits(finding)).toList();
    }

    /**
     * The steps a treatment is estimated with: those of its template, stretched to the minutes the restorer gave; one step named
     * by the title when it was written in the shop's own words.
     */
    public static List<TemplateStep> listSteps(Treatment treatment) {
        return StretchedSteps.of(treatment, find(treatment.template()));
    }

    /** The steps still to be done when an owner has agreed: none for what was done before, such as the examination. */
    public static List<TemplateStep> listStepsAhead(Treatment treatment) {
        return listStepsAhead(treatment, PracticeTimes.COMMON);
    }

    /** The same with the shop's own times. */
    public static List<TemplateStep> listStepsAhead(Treatment treatment, PracticeTimes practice) {
        boolean done = partOf(treatment) == JobPart.BEFORE;
        return done
                ? List.of()
                : StretchedSteps.of(treatment, find(treatment.template()).map(practice::of));
    }

    /** What a treatment is to the job; own words count as treating the instrument. */
    public static JobPart partOf(Treatment treatment) {
        return find(treatment.template()).map(TreatmentTemplate::job).orElse(JobPart.TREATMENT);
    }

    private static Map<String, TreatmentTemplate> read() {
        Map<String, TreatmentTemplate> byKey = new LinkedHashMap<>();
        TemplateTables.read().forEach(template -> byKey.put(template.key(), template));
        return byKey;
    }
}
