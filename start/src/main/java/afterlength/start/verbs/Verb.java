package afterlength.start.verbs;

import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.List;
import java.util.Optional;

/** One question of the trade, asked with a document and answered with a document. */
public interface Verb {
    /** The word typed behind {@code ./afterlength}. */
    String name();

    /** What it answers, in one line. */
    String summary();

    /** A document that is answered just as it stands; shown as help. */
    String example();

    /** The keys of question and answer, one a line, without any brace: the example is the only document in the help. */
    String keys();

    Reply answer(DocumentReader question);

    /** Whether it can put what it answers on paper. */
    default boolean draws() {
        return false;
    }

    /** What it puts on paper; asked only with a document that was answered. */
    default Optional<Sheet> findSheet(DocumentReader answered) {
        return Optional.empty();
    }

    /** All verbs, in the order the help lists them. */
    static List<Verb> all() {
        return List.of(
                new BridgeVerb(),
                new BowingVerb(),
                new StringsVerb(),
                new PassageVerb(),
                new MoistureVerb(),
                new GluingVerb(),
                new VarnishVerb(),
                new ColourDifferenceVerb(),
                new RetouchVerb(),
                new PlanVerb());
    }
}
