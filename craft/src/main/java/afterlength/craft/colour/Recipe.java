package afterlength.craft.colour;

import java.util.List;
import java.util.Map;

/**
 * A film that comes near a target.
 *
 * @param amounts in the order of the palette, each above nothing
 * @param film_um their sum
 * @param result the film's reflectance as an instrument would see it
 * @param differences ΔE00 to the target under each light
 * @param firstCoat what the loss should look like after the first coat, {@value #FIRST_COAT} of the film
 */
public record Recipe(
        List<Amount> amounts, double film_um, Spectrum result, Map<Light, Double> differences, Spectrum firstCoat) {
    /**
     * A first coat of three quarters leaves room for amounts and drawdowns that are off by 5 to 10 %: what is missing is worked out
     * from the next measurement. Source: docs/sources.md#colour-study.
     */
    public static final double FIRST_COAT = 0.75;

    /**
     * How much of one colorant.
     *
     * @param amount_um micrometres of film in the palette's own strength
     * @param sensitivity ΔE00 in daylight by which the film changes when this amount is 5 % off
     */
    public record Amount(String colorant, double amount_um, double sensitivity) {}

    public Recipe {
        amounts = List.copyOf(amounts);
        differences = Map.copyOf(differences);
    }

    public double difference(Light light) {
        return differences.getOrDefault(light, Double.NaN);
    }

    /** By which recipes are put in order: daylight, and light A at seven tenths. Source: docs/sources.md#colour-study. */
    public double score() {
        return Math.sqrt(
                Math.pow(difference(Light.D65), 2) + RecipeTarget.SECOND_LIGHT * Math.pow(difference(Light.A), 2));
    }
}
