package afterlength.workshop.examination;

import afterlength.workshop.desk.Typed;
import java.util.Map;

/** The line beside the fields for the air: where wood settles in it. */
record MoistureLine(String words) {
    static MoistureLine of(Typed typed) {
        Air air = MeasureForm.air(typed);
        return new MoistureLine(
                typed.sound() ? air.moistureSentence() : typed.problems().get(0).message());
    }

    /** For a form that was filled in already; problems of its own stand beside their fields. */
    static MoistureLine beside(Typed typed) {
        return of(Typed.known(
                Map.of("temperature_c", typed.raw("temperature_c"), "humidity_pct", typed.raw("humidity_pct"))));
    }
}
