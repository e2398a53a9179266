package afterlength.craft.colour;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Makes a recipe of amounts: its colour under each light, what it is sensitive to, its first coat. */
final class RecipeMaking {
    /** An amount weighed or counted in the workshop may be off by this part. Source: docs/sources.md#colour-study. */
    private static final double AMOUNT_ERROR = 0.05;

    private final RecipeQuestion question;
    private final FilmOnGround film;
    private final Viewing daylight;
    private final Map<Light, Viewing> viewings = new EnumMap<>(Light.class);

    RecipeMaking(RecipeQuestion question) {
        this.question = question;
        film = new FilmOnGround(question.ground(), question.palette(), question.surface());
        daylight = Viewing.under(Light.D65, question.wavelengths());
        for (Light light : Light.values()) {
            viewings.put(light, Viewing.under(light, question.wavelengths()));
        }
    }

    /** A recipe for comparison; sensitivities and first coat are still to come, see {@link #complete}. */
    Recipe recipe(Map<Integer, Double> amountOf) {
        List<Recipe.Amount> amounts = amountOf.entrySet().stream()
                .map(entry ->
                        new Recipe.Amount(question.palette().get(entry.getKey()).name(), entry.getValue(), 0))
                .toList();
        Spectrum result = result(amounts, 1);
        return new Recipe(amounts, sum(amounts), result, differences(result), result);
    }

    Recipe complete(Recipe recipe) {
        List<Recipe.Amount> amounts = IntStream.range(0, recipe.amounts().size())
                .mapToObj(n -> sensitive(recipe, n))
                .toList();
        return new Recipe(
                amounts, recipe.film_um(), recipe.result(), recipe.differences(), result(amounts, Recipe.FIRST_COAT));
    }

    private Recipe.Amount sensitive(Recipe recipe, int which) {
        Recipe.Amount amount = recipe.amounts().get(which);
        double change = Math.max(changed(recipe, which, 1 + AMOUNT_ERROR), changed(recipe, which, 1 - AMOUNT_ERROR));
        return new Recipe.Amount(amount.colorant(), amount.amount_um(), change);
    }

    private double changed(Recipe recipe, int which, double factor) {
        List<Recipe.Amount> amounts = new ArrayList<>(recipe.amounts());
        Recipe.Amount off = amounts.get(which);
        amounts.set(which, new Recipe.Amount(off.colorant(), off.amount_um() * factor, 0));
        return ColourDifference.of(daylight.lab(recipe.result()), daylight.lab(result(amounts, 1)));
    }

    private Spectrum result(List<Recipe.Amount> amounts, double part) {
        int[] which =
                amounts.stream().mapToInt(amount -> place(amount.colorant())).toArray();
        double[] films = amounts.stream()
                .mapToDouble(amount -> amount.amount_um() * part)
                .toArray();
        double[] reflectances = new double[question.wavelengths().count()];
        film.measure(which, films, reflectances);
        return Spectrum.of(question.wavelengths(), reflectances);
    }

    private int place(String name) {
        return IntStream.range(0, question.palette().size())
                .filter(n -> question.palette().get(n).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Map<Light, Double> differences(Spectrum result) {
        Map<Light, Double> differences = new EnumMap<>(Light.class);
        viewings.forEach((light, viewing) ->
                differences.put(light, ColourDifference.of(viewing.lab(question.target()), viewing.lab(result))));
        return differences;
    }

    private static double sum(List<Recipe.Amount> amounts) {
        return amounts.stream().mapToDouble(Recipe.Amount::amount_um).sum();
    }
}
