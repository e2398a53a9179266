package afterlength.workshop.agreement;

import afterlength.workshop.desk.Typed;
import java.util.Set;

/** What the ticked lines come to; shown anew while the owner chooses. */
record AgreeSum(Scope scope, Reckoning sum, PriceWords words) {
    static AgreeSum of(Typed typed, Proposal proposal) {
        Set<Long> accepted = ConsentForm.accepted(typed, proposal);
        return new AgreeSum(
                Scope.of(proposal.treatments(), accepted), proposal.offers().sumOf(accepted), proposal.words());
    }
}
