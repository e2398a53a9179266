package afterlength.workshop.agreement;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of a proposal being written.
 *
 * @param template what it was made from, null for own words
 */
record TreatmentPage(
        Frame frame,
        String address,
        List<FindingLine> findings,
        @Nullable TreatmentTemplate template,
        String currency,
        Typed typed) {}
