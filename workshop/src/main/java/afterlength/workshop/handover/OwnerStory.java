package afterlength.workshop.handover;

import afterlength.workshop.examination.MeasurePair;
import afterlength.workshop.instrument.Visit;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A visit told day by day in one file for the owner to keep and to pass on: no names, no prices, no addresses.
 *
 * @param seen what was found, each as one sentence
 * @param goneHome the day of the handover, null while the work goes on
 */
record OwnerStory(
        String shopName,
        boolean demonstration,
        String instrument,
        String kind,
        Visit visit,
        List<String> seen,
        List<StoryDay> days,
        List<MeasurePair> pairs,
        List<String> care,
        @Nullable LocalDate goneHome) {}
