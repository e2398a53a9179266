package afterlength.workshop.retouch;

import afterlength.craft.colour.Light;
import afterlength.craft.colour.Recipe;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A recipe with the names of the palette, in parts and drops. */
record Mix(Recipe recipe, List<MixLine> lines) {
    Mix {
        lines = List.copyOf(lines);
    }

    static Mix of(RetouchCase from, Recipe recipe) {
        List<Double> shares = recipe.amounts().stream()
                .map(amount -> amount.amount_um() / recipe.film_um())
                .toList();
        List<Integer> drops = Drops.of(shares);
        List<MixLine> lines = new ArrayList<>();
        for (int n = 0; n < shares.size(); n++) {
            Recipe.Amount amount = recipe.amounts().get(n);
            lines.add(new MixLine(
                    from.colour(amount.colorant()),
                    amount.amount_um(),
                    shares.get(n),
                    drops.get(n),
                    amount.sensitivity()));
        }
        lines.sort(Comparator.comparingDouble(MixLine::share).reversed());
        return new Mix(recipe, lines);
    }

    /** By which a person chooses it: its colours. */
    String key() {
        return lines.stream().map(line -> Long.toString(line.colour().id())).collect(Collectors.joining("-"));
    }

    double coats() {
        return recipe.film_um();
    }

    double difference(Light light) {
        return recipe.difference(light);
    }

    List<CoatPart> parts(double part) {
        return lines.stream()
                .map(line -> new CoatPart(line.colour().id(), line.coats() * part))
                .toList();
    }
}
