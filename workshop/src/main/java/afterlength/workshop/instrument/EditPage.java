package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

record EditPage(Frame frame, String address, Typed typed) {}
