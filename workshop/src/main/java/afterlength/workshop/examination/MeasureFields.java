package afterlength.workshop.examination;

import afterlength.workshop.desk.Typed;
import java.util.List;

/** What the form for a measure shows: what was typed, and what is offered. */
record MeasureFields(Typed typed, List<String> hands) {
    MoistureLine moisture() {
        return MoistureLine.beside(typed);
    }
}
