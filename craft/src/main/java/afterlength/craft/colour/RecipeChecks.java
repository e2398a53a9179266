package afterlength.craft.colour;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Everything that is wrong with a question for a recipe, at once. */
final class RecipeChecks {
    static final int LARGEST_PALETTE = 30;

    private static final double THICKEST_UM = 1000;

    private final RecipeQuestion question;
    private final List<Problem> problems = new ArrayList<>();

    private RecipeChecks(RecipeQuestion question) {
        this.question = question;
    }

    static List<Problem> listProblems(RecipeQuestion question) {
        RecipeChecks checks = new RecipeChecks(question);
        checks.checkSpectrum("/ground", "The ground", question.ground());
        checks.checkSpectrum("/target", "The target", question.target());
        checks.checkPalette();
        checks.checkLimits();
        return checks.problems;
    }

    private void checkSpectrum(String at, String name, Spectrum spectrum) {
        if (!spectrum.wavelengths().equals(question.wavelengths())) {
            note(
                    at,
                    spectrum.wavelengths(),
                    name + " is given at " + words(spectrum.wavelengths()) + ", the target at "
                            + words(question.wavelengths()) + "; give all at the same wavelengths.");
        }
        for (int i = 0; i < spectrum.wavelengths().count(); i++) {
            double value = spectrum.at(i);
            if (!(value > 0 && value < 1)) {
                note(
                        at,
                        value,
                        name + " has the reflectance " + value + " at "
                                + spectrum.wavelengths().at_nm(i)
                                + " nm; a reflectance lies between 0 and 1, both left out.");
                return;
            }
        }
    }

    private void checkPalette() {
        int size = question.palette().size();
        if (size < 1 || size > LARGEST_PALETTE) {
            note("/palette", size, "The palette has " + size + " colorants; give 1 to " + LARGEST_PALETTE + ".");
        }
        for (int n = 0; n < size; n++) {
            checkColorant("/palette/" + n, question.palette().get(n));
        }
    }

    private void checkColorant(String at, Colorant colorant) {
        if (!colorant.wavelengths().equals(question.wavelengths())) {
            note(
                    at,
                    colorant.wavelengths(),
                    "The colorant " + colorant.name() + " is given at "
                            + words(colorant.wavelengths()) + ", the target at " + words(question.wavelengths())
                            + "; give all at the same wavelengths.");
        }
        checkFilm(at + "/k_per_um", colorant, "absorption", colorant.absorption());
        checkFilm(at + "/s_per_um", colorant, "scatter", colorant.scatter());
        if (RecipeSearch.strength(colorant) <= 0) {
            note(
                    at,
                    colorant.name(),
                    "The colorant " + colorant.name() + " neither absorbs nor scatters; take it out.");
        }
    }

    private void checkFilm(String at, Colorant colorant, String what, Spectrum film) {
        for (int i = 0; i < film.wavelengths().count(); i++) {
            double value = film.at(i);
            if (!(value >= 0 && value < 1e6)) {
                note(
                        at,
                        value,
                        "The " + what + " of " + colorant.name() + " is " + value + " at "
                                + film.wavelengths().at_nm(i) + " nm; it must be 0 or more and below a million.");
                return;
            }
        }
    }

    private void checkLimits() {
        int colorants = question.limits().colorants();
        if (colorants < 1 || colorants > RecipeLimits.MOST_COLORANTS) {
            note(
                    "/limits/colorants",
                    colorants,
                    "A recipe of " + colorants + " colorants is not searched for; allowed are 1 to "
                            + RecipeLimits.MOST_COLORANTS + ".");
        }
        double film_um = question.limits().film_um();
        if (!(film_um > 0 && film_um <= THICKEST_UM)) {
            note(
                    "/limits/film_um",
                    film_um,
                    "The thickest film is " + film_um + " µm; give more than 0 and at most 1000 µm.");
        }
    }

    private static String words(Wavelengths wavelengths) {
        return String.format(
                Locale.ROOT, "%d to %d nm by %d", wavelengths.first_nm(), wavelengths.last_nm(), wavelengths.step_nm());
    }

    private void note(String at, Object value, String message) {
        problems.add(new Problem(at, value, message));
    }
}
