package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;

/** A finding being corrected. */
record FindingPage(Frame frame, Finding finding, FindingFields fields) {}
