package afterlength.workshop.agreement;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** What a later stage does when an owner has agreed; it happens together with the agreement or not at all. */
public interface AfterAgreement {
    /**
     * Called within the transaction that keeps the agreement.
     *
     * @param accepted in the order of the proposal; an earlier agreement may have accepted some of them already
     */
    void agreed(Handle handle, Agreement agreement, List<Treatment> accepted);
}
