package afterlength.workshop.retouch;

import afterlength.workshop.agreement.TemplateStep;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Figures;

/** How long a coat usually dries, from the practice times that proposals begin with ({@code docs/sources.md#shop-times}). */
final class PracticeWait {
    private static final String COAT = "one thin coat";

    private PracticeWait() {}

    /** "24 to 72 h, usually 60 h, for a thin oil coat". */
    static String words(boolean oily) {
        TemplateStep step = TreatmentTemplates.get(oily ? "retouch-oil" : "retouch-spirit").steps().stream()
                .filter(one -> one.name().equals(COAT))
                .findFirst()
                .orElseThrow();
        return Figures.plain(step.waiting().low_h()) + " to "
                + Figures.plain(step.waiting().high_h()) + " h, usually "
                + Figures.plain(step.waiting().typical_h()) + " h, for a thin " + (oily ? "oil" : "spirit") + " coat";
    }
}
