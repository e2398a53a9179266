package afterlength.workshop.retouch;

import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Optional;

/** A coat that is being laid. */
record CoatPage(Frame frame, RetouchCase one, String recipe, Optional<Mix> mix, Typed typed) {
    String address() {
        return "/visits/" + one.retouch().visitId() + "/retouch/"
                + one.retouch().id() + "/coat";
    }

    List<Cautions> cautions() {
        return Cautions.of(
                "solvent", mix.map(known -> MixWords.material(known, 1)).orElse(""));
    }
}
