package afterlength.craft.colour;

import afterlength.craft.units.Problem;
import java.util.List;

/** What comes of a search for a recipe. */
public sealed interface RecipeAnswer {
    /** The best few, the nearest first; no two are the same colorants with one more. */
    record Found(List<Recipe> recipes, List<RecipeCaveat> caveats) implements RecipeAnswer {
        public Found {
            recipes = List.copyOf(recipes);
            caveats = List.copyOf(caveats);
        }
    }

    /** Nothing could be searched for. */
    record Refused(List<Problem> problems) implements RecipeAnswer {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
