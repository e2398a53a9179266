package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;

/** A measure being corrected. */
record MeasurePage(Frame frame, Measure measure, MeasureFields fields) {}
