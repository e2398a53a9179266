package afterlength.workshop.tablet;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** What a strange tablet sees. */
record PairPage(Frame frame, Typed typed) {}
