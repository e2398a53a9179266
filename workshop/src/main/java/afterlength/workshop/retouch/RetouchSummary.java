package afterlength.workshop.retouch;

import afterlength.craft.colour.Light;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.instrument.Visit;
import java.util.List;

record RetouchSummary(Visit visit, List<RetouchCase> cases, List<MendedLine> lines) {
    /** Where a loss stands, in one sentence. */
    static String standing(RetouchCase one) {
        if (!one.begun()) {
            return "no coat laid yet.";
        }
        String coats = one.coats().size() == 1 ? "one coat" : one.coats().size() + " coats";
        return one.now()
                .map(seen -> coats + ", ΔE00 " + Figures.fixed(one.difference(seen, Light.D65), 1)
                        + " to the varnish beside it in daylight, "
                        + Figures.fixed(one.difference(seen, Light.A), 1) + " under a lamp.")
                .orElse(coats + ", not measured again yet.");
    }
}
