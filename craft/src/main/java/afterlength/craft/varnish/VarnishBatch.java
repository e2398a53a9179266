package afterlength.craft.varnish;

import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A batch of varnish by mass and volume. The volumes of the ingredients are added; a mixture that shrinks, and the mass that drying
 * oil gains from the air, are left out. Source: docs/sources.md#film-formulas.
 *
 * @param volume_mL of everything
 * @param massSolids_pct mass that stays in the film, of all mass
 * @param volumeSolids_pct volume that stays in the film, of all volume
 * @param oilToResin empty when there is no oil or no resin in it
 */
public record VarnishBatch(
        double mass_g,
        double volume_mL,
        double massSolids_pct,
        double volumeSolids_pct,
        Optional<OilToResin> oilToResin)
        implements BatchAnswer {
    private static final double HEAVIEST_G = 100_000;
    private static final double LIGHTEST_KG_M3 = 500;
    private static final double DENSEST_KG_M3 = 8000;

    public static BatchAnswer of(List<Ingredient> ingredients) {
        List<Problem> problems = listProblems(ingredients);
        return problems.isEmpty() ? counted(ingredients) : new BatchAnswer.Refused(problems);
    }

    private static VarnishBatch counted(List<Ingredient> ingredients) {
        double mass_g = ingredients.stream().mapToDouble(Ingredient::mass_g).sum();
        double volume_mL =
                ingredients.stream().mapToDouble(Ingredient::volume_mL).sum();
        List<Ingredient> solids =
                ingredients.stream().filter(one -> one.part().solid()).toList();
        return new VarnishBatch(
                mass_g,
                volume_mL,
                100 * solids.stream().mapToDouble(Ingredient::mass_g).sum() / mass_g,
                100 * solids.stream().mapToDouble(Ingredient::volume_mL).sum() / volume_mL,
                oilToResin(mass(ingredients, Part.OIL), mass(ingredients, Part.RESIN)));
    }

    private static Optional<OilToResin> oilToResin(double oil_g, double resin_g) {
        return oil_g > 0 && resin_g > 0 ? Optional.of(new OilToResin(oil_g / resin_g)) : Optional.empty();
    }

    private static double mass(List<Ingredient> ingredients, Part part) {
        return ingredients.stream()
                .filter(one -> one.part() == part)
                .mapToDouble(Ingredient::mass_g)
                .sum();
    }

    private static List<Problem> listProblems(List<Ingredient> ingredients) {
        List<Problem> problems = new ArrayList<>();
        if (ingredients.isEmpty()) {
            problems.add(new Problem("/ingredients", null, "The batch has no ingredients; give at least one."));
        }
        for (int n = 0; n < ingredients.size(); n++) {
            Ingredient one = ingredients.get(n);
            checkRange(problems, n, one.name(), "mass_g", "mass", one.mass_g(), 0, HEAVIEST_G, "g");
            checkRange(
                    problems,
                    n,
                    one.name(),
                    "density_kg_m3",
                    "density",
                    one.density_kg_m3(),
                    LIGHTEST_KG_M3,
                    DENSEST_KG_M3,
                    "kg/m³");
        }
        return problems;
    }

    private static void checkRange(
            List<Problem> problems,
            int n,
            String name,
            String key,
            String what,
            double value,
            double low,
            double high,
            String unit) {
        if (!(value > low && value <= high)) {
            problems.add(new Problem(
                    "/ingredients/" + n + "/" + key,
                    value,
                    "The " + what + " of " + name + " is " + PlainNumber.of(value) + " " + unit
                            + "; it must be more than " + PlainNumber.of(low) + " and at most " + PlainNumber.of(high)
                            + " "
                            + unit + "."));
        }
    }
}
