package afterlength.workshop.examination;

import afterlength.workshop.desk.Typed;

/** The line beside the fields for the air: where wood settles in it. */
record MoistureLine(String words) {
    static MoistureLine of(Typed typed) {
        Air air = MeasureForm.air(typed);
        return new MoistureLine(
                typed.sound() ? air.moistureSentence() : typed.problems().get(0).message());
    }
}
