package afterlength.workshop.retouch;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import java.util.ArrayList;
import java.util.List;

/** The worn areas of a visit, and one being written down. */
record WornAreaPage(
        Frame frame, long visitId, List<WornLine> lines, List<Finding> findings, List<Varnish> book, Typed typed) {

    /** An area with its words. */
    record WornLine(WornArea area, String finding, VarnishEntry entry) {
        String coats() {
            return VarnishWords.coats(area, entry.film());
        }
    }

    String address() {
        return "/visits/" + visitId + "/worn-areas";
    }

    List<Choice> findingChoices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "choose")));
        findings.forEach(one -> choices.add(
                new Choice(Long.toString(one.id()), one.title() + (one.place().isEmpty() ? "" : ", " + one.place()))));
        return choices;
    }

    List<Choice> varnishChoices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "choose")));
        book.forEach(one -> choices.add(new Choice(Long.toString(one.id()), one.name())));
        return choices;
    }
}
