package afterlength.workshop.retouch;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import java.util.ArrayList;
import java.util.List;

/** A loss being written down. */
record NewRetouchPage(Frame frame, long visitId, List<Finding> findings, List<PaletteColour> palette, Typed typed) {
    List<Choice> findingChoices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "none")));
        findings.forEach(one -> choices.add(
                new Choice(Long.toString(one.id()), one.title() + (one.place().isEmpty() ? "" : ", " + one.place()))));
        return choices;
    }
}
