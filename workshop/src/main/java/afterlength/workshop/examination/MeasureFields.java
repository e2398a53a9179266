package afterlength.workshop.examination;

import afterlength.workshop.desk.Typed;
import java.util.List;

/** What the form for a measure shows: what was typed, and what is offered. */
record MeasureFields(Typed typed, List<String> hands) {
    /** The line beside the air; empty while the air cannot be read. */
    MoistureLine moisture() {
        return MoistureLine.of(Typed.known(java.util.Map.of(
                "temperature_c", typed.raw("temperature_c"), "humidity_pct", typed.raw("humidity_pct"))));
    }
}
