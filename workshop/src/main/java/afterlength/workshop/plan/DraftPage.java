package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;

/** A plan before it is taken: what it does to what was promised. */
record DraftPage(Frame frame, Draft draft, DraftPart better, DraftPart moved, String workPage) {}
