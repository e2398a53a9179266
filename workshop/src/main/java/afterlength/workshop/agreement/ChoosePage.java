package afterlength.workshop.agreement;

import afterlength.workshop.desk.Frame;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Treatments to choose from.
 *
 * @param finding what they are for, or null
 * @param fitting those that fit the finding
 * @param others all others
 */
record ChoosePage(
        Frame frame,
        long visitId,
        @Nullable FindingLine finding,
        List<TreatmentTemplate> fitting,
        List<TreatmentTemplate> others) {
    String ownWords() {
        String address = "/visits/" + visitId + "/treatments/own";
        return finding == null ? address : address + "?finding=" + finding.id();
    }
}
