package afterlength.start.verbs;

import afterlength.craft.colour.Lab;
import afterlength.craft.colour.Light;
import afterlength.craft.colour.Recipe;
import afterlength.craft.colour.RecipeAnswer;
import afterlength.craft.colour.RecipeCaveat;
import afterlength.craft.colour.RecipeSearch;
import afterlength.craft.colour.Viewing;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which colorants, and how much of each, come near the varnish beside a loss. */
final class RetouchVerb implements Verb {
    @Override
    public String name() {
        return "retouch";
    }

    @Override
    public String summary() {
        return "which colorants, and how much of each, come near the varnish beside a loss";
    }

    @Override
    public String example() {
        return """
                {
                  "wavelengths": { "start_nm": 400, "step_nm": 20 },
                  "ground": { "lab": [72, 8, 28] },
                  "target": { "lab": [42, 18, 36] },
                  "palette": [
                    { "name": "yellow (invented)",
                      "k_per_um": [0.20, 0.19, 0.17, 0.13, 0.08, 0.04, 0.02, 0.01, 0.005, 0.004, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003],
                      "s_per_um": [0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003] },
                    { "name": "red (invented)",
                      "k_per_um": [0.10, 0.10, 0.11, 0.12, 0.13, 0.14, 0.14, 0.12, 0.07, 0.03, 0.012, 0.006, 0.004, 0.003, 0.003, 0.003],
                      "s_per_um": [0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002, 0.002] },
                    { "name": "brown (invented)",
                      "k_per_um": [0.15, 0.14, 0.13, 0.12, 0.11, 0.10, 0.09, 0.08, 0.07, 0.06, 0.055, 0.05, 0.045, 0.04, 0.04, 0.035],
                      "s_per_um": [0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010, 0.010] }
                  ],
                  "limits": { "colorants": 3, "film_um": 40 }
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  ground       the sealed ground in the loss: one of
                               reflectance, with start_nm, step_nm and values from 0 to 1 (mirror image left out), or
                               lab, [L*, a*, b*] against the white of D65, 2° observer
                  target       the varnish beside it, in the same way
                  palette      1 to 30 colorants: name, k_per_um and s_per_um (what a micrometre of film absorbs and
                               scatters), at the wavelengths of the reflectances
                  wavelengths  start_nm and step_nm of the palette, where neither ground nor target is a reflectance
                               (otherwise 380 nm by 10)
                  limits       optional: colorants, 1 to 3 in a recipe, and film_um, the thickest film (3 and 40)

                The answer holds recipes, the nearest first, no two the same with one colorant more: amounts (name, um of
                film, share_pct, and sensitivity_de00, what 5 % of it changes), de00 under D65, A and LED-B1, film_um,
                first_coat (um of each for three quarters of the film, and the lab it should then have), and caveats.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        Optional<RetouchDocument.Read> read = RetouchDocument.find(question);
        if (question.hasProblems() || read.isEmpty()) {
            return new Reply.Refused(question.problems());
        }
        RecipeAnswer answer = RecipeSearch.run(read.get().question());
        if (answer instanceof RecipeAnswer.Refused refused) {
            return new Reply.Refused(refused.problems());
        }
        return new Reply.Answered(
                document((RecipeAnswer.Found) answer, read.get().spectral()));
    }

    private static AnswerDocument document(RecipeAnswer.Found found, boolean spectral) {
        List<RecipeCaveat> caveats = new ArrayList<>(found.caveats());
        if (!spectral) {
            caveats.add(RecipeCaveat.WITHOUT_SPECTRUM);
        }
        return new AnswerDocument()
                .putObjects(
                        "recipes",
                        found.recipes().stream().map(RetouchVerb::recipe).toList())
                .putTexts("caveats", caveats.stream().map(RecipeCaveat::text).toList());
    }

    private static AnswerDocument recipe(Recipe recipe) {
        return new AnswerDocument()
                .putObjects(
                        "amounts",
                        recipe.amounts().stream()
                                .map(amount -> amount(recipe, amount))
                                .toList())
                .put(
                        "de00",
                        new AnswerDocument()
                                .put("D65", recipe.difference(Light.D65))
                                .put("A", recipe.difference(Light.A))
                                .put("LED-B1", recipe.difference(Light.LED_B1)))
                .put("film_um", recipe.film_um())
                .put("first_coat", firstCoat(recipe));
    }

    private static AnswerDocument amount(Recipe recipe, Recipe.Amount amount) {
        return new AnswerDocument()
                .put("name", amount.colorant())
                .put("um", amount.amount_um())
                .put("share_pct", 100 * amount.amount_um() / recipe.film_um())
                .put("sensitivity_de00", amount.sensitivity());
    }

    private static AnswerDocument firstCoat(Recipe recipe) {
        Lab colour = Viewing.under(Light.D65, recipe.firstCoat().wavelengths()).lab(recipe.firstCoat());
        return new AnswerDocument()
                .putNumbers(
                        "um",
                        recipe.amounts().stream()
                                .map(amount -> amount.amount_um() * Recipe.FIRST_COAT)
                                .toList())
                .putNumbers("lab", List.of(colour.lightness(), colour.a(), colour.b()));
    }
}
