package afterlength.workshop.agreement;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the person chose for a crack; to leave cleats out is one of the answers. */
public enum AccessChoice {
    UNDECIDED("not decided yet"),
    CLEATS("glue it and lay the cleats through the sound-hole"),
    NO_CLEATS("glue it, no cleats: it is short, clean and closes well"),
    OPEN_TOP("open the top");

    /** The treatment that this study says most about. */
    static final String LAID_IN = "studs-through-sound-hole";

    private final String words;

    AccessChoice(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** What is done, in the order of the job; nothing while nothing is decided. */
    List<TreatmentTemplate> work() {
        Stream<String> keys = switch (this) {
            case UNDECIDED -> Stream.of();
            case CLEATS -> Stream.of("crack-outside", LAID_IN);
            case NO_CLEATS -> Stream.of("crack-outside");
            case OPEN_TOP -> Stream.of("crack-top-off");
        };
        return keys.map(TreatmentTemplates::find).flatMap(Optional::stream).toList();
    }
}
