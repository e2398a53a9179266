package afterlength.craft.glue;

import java.util.OptionalDouble;

/** The temperature of a film over time, by one of the two models. */
interface FilmCurve {
    /** When the film has cooled to this temperature, or nothing where it takes longer than {@link WindowSeconds#LONGEST_S}. */
    OptionalDouble findTime_s(double gel_C);

    double at_C(double time_s);
}
