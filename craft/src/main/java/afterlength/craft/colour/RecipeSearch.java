package afterlength.craft.colour;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The recipes for a retouch: every choice of up to three colorants is brought as near to the target as its amounts allow, in
 * daylight and under light A together ({@link RecipeTrial}), and the best few that really differ are kept. What a film does under
 * the warm LED is told, not searched for. Left out: a colorant's own spread from batch to batch, and the angle of light.
 */
public final class RecipeSearch {
    private static final int FEW = 5;

    /** A colorant below this part of the film is nothing that a brush could measure out; it is left out. */
    private static final double NEGLIGIBLE = 0.005;

    /** What one colorant more has to gain to be worth the trouble; our own choice, far below what the eye sees. */
    private static final double WORTH = 0.02;

    private final RecipeQuestion question;
    private final RecipeTarget target;
    private final RecipeMaking making;
    private final double[] units;

    private RecipeSearch(RecipeQuestion question) {
        this.question = question;
        target = new RecipeTarget(question);
        making = new RecipeMaking(question);
        units = question.palette().stream()
                .mapToDouble(one -> 1 / strength(one))
                .toArray();
    }

    public static RecipeAnswer run(RecipeQuestion question) {
        List<Problem> problems = RecipeChecks.listProblems(question);
        return problems.isEmpty() ? new RecipeSearch(question).found() : new RecipeAnswer.Refused(problems);
    }

    /** How much a unit of a colorant takes out of the light or gives back, on the mean. */
    static double strength(Colorant colorant) {
        return Arrays.stream(colorant.absorption().values()).average().orElse(0)
                + Arrays.stream(colorant.scatter().values()).average().orElse(0);
    }

    private RecipeAnswer found() {
        List<Recipe> few = few();
        return new RecipeAnswer.Found(few, caveats(few));
    }

    private List<Recipe> few() {
        List<Recipe> ordered = choices().stream()
                .map(which ->
                        RecipeTrial.run(target, which, units, question.limits().film_um()))
                .map(trial -> making.recipe(whole(trial)))
                .filter(recipe -> !recipe.amounts().isEmpty())
                .sorted(Comparator.comparingDouble(RecipeSearch::order))
                .toList();
        List<Recipe> few = new ArrayList<>();
        for (Recipe recipe : ordered) {
            if (few.size() < FEW && few.stream().noneMatch(kept -> nested(kept, recipe))) {
                few.add(making.complete(recipe));
            }
        }
        return few;
    }

    private static double order(Recipe recipe) {
        return recipe.score() + WORTH * recipe.amounts().size();
    }

    /** All choices of one, two … colorants, by their places in the palette. */
    private List<int[]> choices() {
        List<int[]> choices = new ArrayList<>();
        extend(new int[0], choices);
        return choices;
    }

    private void extend(int[] chosen, List<int[]> choices) {
        int next = chosen.length == 0 ? 0 : chosen[chosen.length - 1] + 1;
        for (int one = next;
                one < units.length && chosen.length < question.limits().colorants();
                one++) {
            int[] longer = Arrays.copyOf(chosen, chosen.length + 1);
            longer[chosen.length] = one;
            choices.add(longer);
            extend(longer, choices);
        }
    }

    /** The amounts of a trial by place, without what is negligible. */
    private static Map<Integer, Double> whole(RecipeTrial trial) {
        double[] amounts = trial.amounts();
        double film = Arrays.stream(amounts).sum();
        Map<Integer, Double> whole = new LinkedHashMap<>();
        for (int n = 0; n < amounts.length; n++) {
            if (amounts[n] > NEGLIGIBLE * film) {
                whole.put(trial.which()[n], amounts[n]);
            }
        }
        return whole;
    }

    private static boolean nested(Recipe first, Recipe second) {
        Set<String> names = names(first);
        Set<String> others = names(second);
        return names.containsAll(others) || others.containsAll(names);
    }

    private static Set<String> names(Recipe recipe) {
        return recipe.amounts().stream().map(Recipe.Amount::colorant).collect(Collectors.toCollection(HashSet::new));
    }

    private List<RecipeCaveat> caveats(List<Recipe> few) {
        List<RecipeCaveat> caveats =
                new ArrayList<>(List.of(RecipeCaveat.GLOSS_FIRST, RecipeCaveat.CALCULATED, RecipeCaveat.TWO_FLUX));
        if (few.isEmpty() || few.get(0).difference(Light.D65) > 1) {
            caveats.add(RecipeCaveat.OUT_OF_REACH);
        }
        if (few.stream().anyMatch(RecipeSearch::lightsDisagree)) {
            caveats.add(RecipeCaveat.LIGHTS_DISAGREE);
        }
        if (few.stream()
                .anyMatch(recipe -> recipe.film_um() > 0.999 * question.limits().film_um())) {
            caveats.add(RecipeCaveat.FILM_AT_CAP);
        }
        return caveats;
    }

    private static boolean lightsDisagree(Recipe recipe) {
        return recipe.difference(Light.D65) <= 1
                && Math.max(recipe.difference(Light.A), recipe.difference(Light.LED_B1)) > 1;
    }
}
