package afterlength.craft.colour;

import static afterlength.craft.colour.ColourTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Films of three invented colorants, mixed by another program and printed to six decimals: their colours, and the way back. */
class RecipePublishedTest {
    /** The surface the other program used; k2 rounded as it rounds it. */
    private static final Saunderson SURFACE = new Saunderson(0.04, 0.596, false);

    private final List<Colorant> palette = SyntheticPalette.colorants();
    private final Spectrum ground = SURFACE.measured(SyntheticPalette.ground());
    private final FilmOnGround film = new FilmOnGround(ground, palette, SURFACE);

    @Test
    void knownFilmsHaveTheirColours() throws IOException {
        for (NamedCsvRecord row : ColourTable.rows("recipe_roundtrip_cases.csv")) {
            Spectrum seen = film(row);
            Lab byDay = Viewing.under(Light.D65, seen.wavelengths()).lab(seen);
            Lab byLamp = Viewing.under(Light.A, seen.wavelengths()).lab(seen);
            assertThat(byDay.lightness()).as(row.toString()).isCloseTo(number(row, "L65"), within(2e-6));
            assertThat(byDay.a()).as(row.toString()).isCloseTo(number(row, "a65"), within(2e-6));
            assertThat(byDay.b()).as(row.toString()).isCloseTo(number(row, "b65"), within(2e-6));
            assertThat(byLamp.lightness()).as(row.toString()).isCloseTo(number(row, "LA"), within(2e-6));
            assertThat(byLamp.a()).as(row.toString()).isCloseTo(number(row, "aA"), within(2e-6));
            assertThat(byLamp.b()).as(row.toString()).isCloseTo(number(row, "bA"), within(2e-6));
        }
    }

    @Test
    void knownFilmsAreFoundAgain() throws IOException {
        int same = 0;
        List<NamedCsvRecord> rows = ColourTable.rows("recipe_roundtrip_cases.csv");
        for (NamedCsvRecord row : rows) {
            Recipe best = best(film(row));
            assertThat(best.difference(Light.D65)).as(row.toString()).isLessThan(0.1);
            assertThat(best.difference(Light.A)).as(row.toString()).isLessThan(0.15);
            same += names(best).equals(names(row)) ? 1 : 0;
        }
        assertThat(same).isGreaterThanOrEqualTo(rows.size() * 17 / 20);
    }

    /** Under a cap that binds, too, no amount is below nothing and no film past the cap; no recipe is another with one colour more. */
    @Test
    void recipesKeepToTheirLimitsAndReallyDiffer() throws IOException {
        for (NamedCsvRecord row : ColourTable.rows("recipe_roundtrip_cases.csv")) {
            for (double cap : new double[] {0.2, 0.6, 3}) {
                List<Recipe> few = few(film(row), cap);
                assertThat(few).as("%s, cap %s", row, cap).hasSizeBetween(2, 5);
                for (Recipe recipe : few) {
                    assertThat(recipe.amounts()).allMatch(amount -> amount.amount_um() > 0);
                    assertThat(recipe.film_um()).as("%s, cap %s", row, cap).isLessThanOrEqualTo(cap + 1e-9);
                    assertThat(few.stream().filter(other -> names(other).containsAll(names(recipe))))
                            .containsExactly(recipe);
                }
            }
        }
    }

    private Recipe best(Spectrum target) {
        return few(target, 3).get(0);
    }

    private List<Recipe> few(Spectrum target, double cap) {
        RecipeAnswer answer =
                RecipeSearch.run(new RecipeQuestion(ground, target, palette, new RecipeLimits(3, cap), SURFACE));
        return ((RecipeAnswer.Found) answer).recipes();
    }

    private Spectrum film(NamedCsvRecord row) {
        int[] which = {(int) number(row, "i1"), (int) number(row, "i2"), (int) number(row, "i3")};
        double[] amounts = {number(row, "a1"), number(row, "a2"), number(row, "a3")};
        double[] seen = new double[SyntheticPalette.WAVELENGTHS.count()];
        film.measure(which, amounts, seen);
        return Spectrum.of(SyntheticPalette.WAVELENGTHS, seen);
    }

    private Set<String> names(NamedCsvRecord row) {
        Set<String> names = new HashSet<>();
        for (String column : List.of("i1", "i2", "i3")) {
            names.add(palette.get((int) number(row, column)).name());
        }
        return names;
    }

    private static Set<String> names(Recipe recipe) {
        return recipe.amounts().stream().map(Recipe.Amount::colorant).collect(Collectors.toSet());
    }
}
