package afterlength.workshop.handover;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.instrument.Visit;
import java.util.List;

/** Choosing what a story shows. */
record StoryPage(Frame frame, Visit visit, List<Photograph> photographs, Typed typed) {}
