package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The photographs of a visit.
 *
 * @param taken what became of the files just brought, empty when none were
 * @param justPutAway what can be brought back with one touch, or null
 */
record PhotographsPage(
        Frame frame,
        long visitId,
        List<Photograph> photographs,
        List<Photograph> putAway,
        List<Taken> taken,
        @Nullable Photograph justPutAway,
        Typed typed) {

    String answer() {
        if (photographs.isEmpty()) {
            return "No picture yet. Begin with front and back, before anything is touched.";
        }
        return Counted.words(photographs.size(), "picture", "pictures") + " of this visit.";
    }

    List<Moment> momentsShown() {
        return Arrays.stream(Moment.values())
                .filter(moment -> !of(moment).isEmpty())
                .toList();
    }

    List<Photograph> of(Moment moment) {
        return photographs.stream()
                .filter(photograph -> photograph.moment() == moment)
                .toList();
    }
}
