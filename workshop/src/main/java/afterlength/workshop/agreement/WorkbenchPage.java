package afterlength.workshop.agreement;

import afterlength.workshop.desk.Frame;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The workbench of a proposal.
 *
 * @param putAway lines taken out of it
 * @param justPutAway the one taken out a moment ago, offered back at the top
 */
record WorkbenchPage(
        Frame frame,
        Proposal proposal,
        List<Treatment> putAway,
        @Nullable Treatment justPutAway) {
    String home() {
        return "/visits/" + proposal.visit().id();
    }
}
