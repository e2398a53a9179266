package afterlength.workshop.closing;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** The list, to be ticked with one hand. */
record LastChancePage(Frame frame, long visitId, LastChance list, Typed typed) {
    String address() {
        return "/visits/" + visitId + "/last-chance";
    }

    /** A note came back that belongs to nothing that is open; it is shown all the same. */
    boolean noteHasNoField() {
        return !typed.raw("note").isBlank()
                && list.open().stream().noneMatch(item -> item.thing().key().equals(typed.raw("thing")));
    }
}
