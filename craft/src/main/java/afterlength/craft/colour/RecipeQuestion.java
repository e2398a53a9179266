package afterlength.craft.colour;

import java.util.Collection;
import java.util.List;

/**
 * A loss, the varnish beside it and the shop's own colorants. All spectra are given at the same wavelengths.
 *
 * @param ground the sealed ground in the loss, as the instrument sees it
 * @param target the varnish beside it, as the instrument sees it
 * @param surface of ground, target and film
 */
public record RecipeQuestion(
        Spectrum ground, Spectrum target, List<Colorant> palette, RecipeLimits limits, Saunderson surface) {
    public RecipeQuestion {
        palette = List.copyOf(palette);
    }

    public Wavelengths wavelengths() {
        return target.wavelengths();
    }

    /** The same loss after a coat, with the colorants of one recipe: the question whose answer is the next coat. */
    public RecipeQuestion after(Spectrum measured, Recipe recipe) {
        return after(
                measured, recipe.amounts().stream().map(Recipe.Amount::colorant).toList(), limits);
    }

    /** The same with the colorants named, and what the film may still grow by. */
    public RecipeQuestion after(Spectrum measured, Collection<String> colorants, RecipeLimits left) {
        List<Colorant> used = palette.stream()
                .filter(colorant -> colorants.contains(colorant.name()))
                .toList();
        return new RecipeQuestion(measured, target, used, left, surface);
    }
}
