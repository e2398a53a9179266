package afterlength.craft.colour;

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
        List<Colorant> used = palette.stream()
                .filter(colorant -> recipe.amounts().stream()
                        .anyMatch(amount -> amount.colorant().equals(colorant.name())))
                .toList();
        return new RecipeQuestion(measured, target, used, limits, surface);
    }
}
