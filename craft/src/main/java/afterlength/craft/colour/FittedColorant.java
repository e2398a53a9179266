package afterlength.craft.colour;

import java.util.List;

/**
 * A colorant from its drawdowns.
 *
 * @param differences ΔE00 in daylight between each drawdown and the same film counted again, in the order given
 */
public record FittedColorant(Colorant colorant, List<Double> differences) {
    public FittedColorant {
        differences = List.copyOf(differences);
    }

    public double largestDifference() {
        return differences.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
}
