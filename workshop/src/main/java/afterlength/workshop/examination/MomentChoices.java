package afterlength.workshop.examination;

import afterlength.workshop.desk.Choice;
import java.util.Arrays;
import java.util.List;

/** The moments as a form offers them. */
final class MomentChoices {
    static final List<Choice> ALL = Arrays.stream(Moment.values())
            .map(moment -> new Choice(moment.name(), moment.words()))
            .toList();

    private MomentChoices() {}
}
