package afterlength.workshop.agreement;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** An owner's word being written down, with what the ticked lines come to. */
record AgreePage(Frame frame, Proposal proposal, Typed typed, AgreeSum sum) {
    String address() {
        return "/visits/" + proposal.visit().id() + "/agree";
    }
}
