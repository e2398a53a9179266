package afterlength.craft.wood;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.Optional;

/**
 * How far the air may dry, from what a held spruce plate is used to, before sources expect damage. Two ways of reckoning
 * disagree, so the answer is a band: the stress {@code E_R·C·ΔM} reaches the strength across the grain (if nothing creeps), or
 * the strain {@code C·ΔM} reaches a limit from the literature of conservation. The history of the piece outranks both. Left out:
 * old cracks, glue joints, hysteresis, varnish.
 *
 * @param byStrength the humidity at which the strength is reached, or none within the range of the moisture curve
 * @param byStrain the humidity at which the strain limit is reached, or none within that range
 */
public record DryingLimit(Optional<RelativeHumidity> byStrength, Optional<RelativeHumidity> byStrain) {
    /** Across the grain, Engelmann spruce at 12 %. Source: docs/sources.md#wood-handbook-2021, table 5-3. */
    static final double STRENGTH_MPA = 2.4;

    /** Ratio 0.078 and 9.9 GPa in bending raised by a tenth. Sources: docs/sources.md#wood-handbook-2010, docs/sources.md#wood-gravity. */
    static final double STIFFNESS_GPA = 0.078 * 9.9 * 1.1;

    /** Source: docs/sources.md#strain-limit. */
    static final double STRAIN = 0.004;

    /** Loss of moisture at which the strength is reached, per cent moisture content. */
    public static double lossByStrength_pct() {
        return STRENGTH_MPA / (1000 * STIFFNESS_GPA) / perPct();
    }

    /** Loss of moisture at which the strain limit is reached, per cent moisture content. */
    public static double lossByStrain_pct() {
        return STRAIN / perPct();
    }

    /** For a plate that is settled at this moisture. */
    public static DryingLimit from(MoistureContent settled, Temperature temperature) {
        return new DryingLimit(
                find(settled.pct() - lossByStrength_pct(), temperature),
                find(settled.pct() - lossByStrain_pct(), temperature));
    }

    private static double perPct() {
        return Wood.SITKA_SPRUCE.radial().typical_perPct();
    }

    private static Optional<RelativeHumidity> find(double moisture_pct, Temperature temperature) {
        if (moisture_pct < 0) {
            return Optional.empty();
        }
        return EquilibriumHumidity.of(temperature, MoistureContent.ofPct(moisture_pct))
                        instanceof EquilibriumHumidity.Value value
                ? Optional.of(value.humidity())
                : Optional.empty();
    }
}
