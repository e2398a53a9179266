package afterlength.workshop.retouch;

import afterlength.craft.colour.RecipeCaveat;
import afterlength.craft.units.Problem;
import java.util.List;

/** What came of looking for recipes: the best few with their limits, or why there are none. */
record Recipes(List<Mix> mixes, List<RecipeCaveat> caveats, List<Problem> problems) {
    static final Recipes NONE = new Recipes(List.of(), List.of(), List.of());

    Recipes {
        mixes = List.copyOf(mixes);
        caveats = List.copyOf(caveats);
        problems = List.copyOf(problems);
    }
}
