package afterlength.workshop.retouch;

import afterlength.craft.colour.RecipeAnswer;
import afterlength.craft.colour.RecipeCaveat;
import afterlength.craft.colour.RecipeSearch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Brings a loss, its palette and its coats together and looks for the recipes that stand now. */
public final class CaseDesk {
    private final RetouchStore retouches;
    private final PaletteStore palette;
    private final CoatStore coats;

    public CaseDesk(RetouchStore retouches, PaletteStore palette, CoatStore coats) {
        this.retouches = retouches;
        this.palette = palette;
        this.coats = coats;
    }

    RetouchCase get(long retouchId) {
        return of(retouches.get(retouchId));
    }

    RetouchCase of(Retouch retouch) {
        return new RetouchCase(retouch, palette.listOf(retouches.colours(retouch.id())), coats.list(retouch.id()));
    }

    List<RetouchCase> list(long visitId) {
        return retouches.listNow(visitId).stream().map(this::of).toList();
    }

    /** The recipes that stand now, the nearest first; none while a coat waits to be measured. */
    Recipes recipes(RetouchCase one) {
        return one.question()
                .map(question -> RecipeSearch.run(question))
                .map(answer -> read(one, answer))
                .orElse(Recipes.NONE);
    }

    private static Recipes read(RetouchCase one, RecipeAnswer answer) {
        if (answer instanceof RecipeAnswer.Found found) {
            List<RecipeCaveat> caveats = new ArrayList<>(found.caveats());
            if (!one.spectral()) {
                caveats.add(RecipeCaveat.WITHOUT_SPECTRUM);
            }
            return new Recipes(
                    found.recipes().stream().map(recipe -> Mix.of(one, recipe)).toList(), caveats, List.of());
        }
        return new Recipes(List.of(), List.of(), ((RecipeAnswer.Refused) answer).problems());
    }

    /** The recipe with these colours, as the page named it. */
    Optional<Mix> find(RetouchCase one, String key) {
        return recipes(one).mixes().stream()
                .filter(mix -> mix.key().equals(key))
                .findFirst();
    }
}
