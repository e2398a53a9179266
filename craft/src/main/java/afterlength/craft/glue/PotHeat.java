package afterlength.craft.glue;

import afterlength.craft.units.Problem;
import afterlength.craft.units.Temperature;
import java.util.Locale;
import java.util.Optional;

/**
 * What is said to the temperature of a glue pot. Sources name 50, 60, 63 and 66 °C as the highest; the shop aims at 60, is warned
 * above 63 and refused above 65.6 °C. No curve of strength against time and temperature was read.
 */
public enum PotHeat {
    /** Colder than any pot range that was read: the glue may gel on the brush. */
    COOL,
    /** As the sources want it. */
    GOOD,
    /** Hotter than most sources allow. */
    HOT,
    /** Beyond the limit of every source. */
    TOO_HOT;

    /** Source: docs/sources.md#cool-glue-pot, 120 °F. */
    public static final double COOLEST_C = (120 - 32) / 1.8;

    /** Source: docs/sources.md#glue-mixing, 140 to 145 °F. */
    public static final double AIM_C = 60;

    public static final double WARN_ABOVE_C = 63;

    /** Source: docs/sources.md#taggart-1913, 150 °F; printed 65.6 °C. */
    public static final double REFUSED_ABOVE_C = 65.6;

    public static PotHeat of(Temperature pot) {
        if (pot.celsius() > REFUSED_ABOVE_C) {
            return TOO_HOT;
        }
        if (pot.celsius() > WARN_ABOVE_C) {
            return HOT;
        }
        return pot.celsius() < COOLEST_C - 0.05 ? COOL : GOOD;
    }

    static Optional<Problem> findProblem(Temperature glue) {
        return of(glue) != TOO_HOT
                ? Optional.empty()
                : Optional.of(new Problem(
                        "/glue_C",
                        glue.celsius(),
                        String.format(
                                Locale.ROOT,
                                "The glue is at %s °C; above %s °C hide glue breaks down. Let the pot cool to about %.0f °C.",
                                glue.celsius(),
                                REFUSED_ABOVE_C,
                                AIM_C)));
    }
}
