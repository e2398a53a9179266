package afterlength.workshop.handover;

import afterlength.workshop.examination.Measure;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Care advice as a paper of its own, for the case of the instrument: what to do, what to look at, when to come back.
 *
 * @param advice one sentence or two a line; what is usually offered while the instrument is not handed over yet
 * @param asItGoesHome what was measured after work, so that the owner can tell later whether something moved
 * @param handover null while the instrument is still in the house
 */
record CareSheet(
        Settings shop,
        Instrument instrument,
        Owner owner,
        Visit visit,
        List<String> advice,
        List<Measure> asItGoesHome,
        @Nullable Handover handover) {

    boolean isDraft() {
        return handover == null;
    }
}
