package afterlength.workshop.work;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** What one step takes in this shop. */
record TimePage(Frame frame, String address, String step, String common, boolean own, Typed typed) {}
