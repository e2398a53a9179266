package afterlength.workshop.glue;

import afterlength.craft.glue.BloomScale;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** A batch being made up. */
record BatchPage(Frame frame, Typed typed) {
    static final List<Choice> SCALES = List.of(BloomScale.values()).stream()
            .map(scale -> new Choice(scale.name(), scale.words()))
            .toList();
    static final List<Choice> FORMS = List.of(new Choice("GROUND", "ground or pearls"), new Choice("FLAKES", "flakes"));
}
