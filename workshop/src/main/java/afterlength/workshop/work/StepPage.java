package afterlength.workshop.work;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Map;

/** A step being added or changed. */
record StepPage(Frame frame, String address, Map<Long, String> treatments, Typed typed) {
    static final List<Choice> BLOCKS = List.of(
            new Choice("yes", "the instrument is left alone"), new Choice("no", "other work may go on meanwhile"));
}
