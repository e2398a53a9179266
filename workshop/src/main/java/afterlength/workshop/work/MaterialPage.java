package afterlength.workshop.work;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** A material being put on the shelf or changed. */
record MaterialPage(Frame frame, String address, Typed typed) {
    /** Offered, never forced. */
    static final List<String> KINDS = List.of(
            "glue", "fill", "wood", "varnish", "colour", "solvent", "cleaning", "peg compound", "string", "other");
}
