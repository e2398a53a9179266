package afterlength.workshop.instrument;

import afterlength.workshop.desk.Choice;
import java.util.Arrays;
import java.util.List;

/** The kinds of instrument as a form offers them. */
final class KindChoices {
    static final List<Choice> ALL = Arrays.stream(InstrumentKind.values())
            .map(kind -> new Choice(kind.name(), kind.words()))
            .toList();

    private KindChoices() {}
}
