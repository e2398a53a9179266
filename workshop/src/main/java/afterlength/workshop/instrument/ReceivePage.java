package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A receipt being written.
 *
 * @param known the instrument when it comes again or its receipt is corrected, null when it comes for the first time
 */
record ReceivePage(
        Frame frame, String address, @Nullable Instrument known, List<Owner> owners, String currency, Typed typed) {}
