package afterlength.start.verbs;

import afterlength.craft.colour.ColourDifference;
import afterlength.craft.colour.Lab;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;

/** How far pairs of colours lie apart. */
final class ColourDifferenceVerb implements Verb {
    private static final int MOST_PAIRS = 10_000;

    @Override
    public String name() {
        return "colour-difference";
    }

    @Override
    public String summary() {
        return "how far pairs of colours lie apart, by CIEDE2000";
    }

    @Override
    public String example() {
        return """
                {
                  "pairs": [ { "a": [50, 2.6772, -79.7751], "b": [50, 0, -82.7485] } ]
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  pairs   list of pairs; of each a and b are a colour [L*, a*, b*] against the white of D65, 2° observer

                The answer holds de00, one number for each pair. About 1 is just seen where two large even fields touch; in a
                thin line or in grain it takes more.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        List<Double> differences = new ArrayList<>();
        for (DocumentValue pair : question.get("pairs").asList(1, MOST_PAIRS)) {
            DocumentReader both = pair.asObject();
            Lab first = ColourDocument.lab(both.get("a"));
            Lab second = ColourDocument.lab(both.get("b"));
            differences.add(ColourDifference.of(first, second));
        }
        return question.hasProblems()
                ? new Reply.Refused(question.problems())
                : new Reply.Answered(new AnswerDocument().putNumbers("de00", differences));
    }
}
