package afterlength.workshop.climate;

import afterlength.craft.wood.Wood;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The question of the crack, and its answer when everything is there. */
record WoodPage(Frame frame, Typed typed, @Nullable WoodAnswer answer) {
    static final List<Choice> WOODS = Arrays.stream(Wood.values())
            .map(wood -> new Choice(wood.name(), wood.species()))
            .toList();
    static final List<Choice> CUTS =
            List.of(new Choice("QUARTER", "quarter, rings upright"), new Choice("SLAB", "slab, rings flat"));
}
