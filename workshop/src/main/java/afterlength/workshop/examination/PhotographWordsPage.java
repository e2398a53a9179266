package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

record PhotographWordsPage(Frame frame, Photograph photograph, Typed typed) {}
