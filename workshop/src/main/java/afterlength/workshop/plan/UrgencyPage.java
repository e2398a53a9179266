package afterlength.workshop.plan;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.Arrays;
import java.util.List;

/** How much a visit matters, and what is promised for it. */
record UrgencyPage(Frame frame, String address, Typed typed) {
    static final List<Choice> CHOICES = Arrays.stream(Urgency.values())
            .map(urgency -> new Choice(urgency.name(), urgency.words()))
            .toList();
}
