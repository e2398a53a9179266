package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

record OwnerPage(Frame frame, String address, Typed typed) {}
