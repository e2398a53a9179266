package afterlength.workshop.closing;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** The list, to be ticked with one hand. */
record LastChancePage(Frame frame, long visitId, LastChance list, Typed typed) {
    String address() {
        return "/visits/" + visitId + "/last-chance";
    }
}
