package afterlength.workshop.retouch;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.stream.Stream;

/** The mended lines of a visit, and one being chosen. */
record MendedLinesPage(Frame frame, long visitId, List<MendedLine> lines, List<Choice> marks, Typed typed) {
    String address() {
        return "/visits/" + visitId + "/mended-lines";
    }

    List<Choice> lineChoices() {
        return Stream.concat(Stream.of(new Choice("", "choose")), marks.stream())
                .toList();
    }

    List<Choice> untouchedChoices() {
        return Stream.concat(
                        Stream.of(new Choice("", "the varnish 8 to 14 mm beside it, on both sides")), marks.stream())
                .toList();
    }
}
