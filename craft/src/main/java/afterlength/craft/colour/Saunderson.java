package afterlength.craft.colour;

/**
 * What the surface of a film does to its colour: a part of the light is thrown back before it enters, and more of what comes from
 * inside is thrown back inwards. {@code Rm = k1 + (1 − k1)(1 − k2)R / (1 − k2·R)}; an instrument that leaves the mirror image out
 * does not see the first k1. Source: docs/sources.md#saunderson.
 *
 * @param outside k1, part thrown back from outside
 * @param inside k2, part thrown back from inside
 * @param mirrorSeen whether the instrument sees the mirror image (specular included)
 */
public record Saunderson(double outside, double inside, boolean mirrorSeen) {
    /** A dry varnish film, n about 1.5, measured without its mirror image. Source: docs/sources.md#refractive-index. */
    public static final Saunderson VARNISH = ofIndex(1.5, false);

    /** From the refractive index by the formulas of Fresnel: k1 square to the surface, k2 for light from all sides. */
    public static Saunderson ofIndex(double index, boolean mirrorSeen) {
        double square = Math.pow((index - 1) / (index + 1), 2);
        return new Saunderson(square, 1 - (1 - allSides(index)) / (index * index), mirrorSeen);
    }

    public double measured(double inner) {
        return (mirrorSeen ? outside : 0) + (1 - outside) * (1 - inside) * inner / (1 - inside * inner);
    }

    public double inner(double measured) {
        double through = measured - (mirrorSeen ? outside : 0);
        return through / ((1 - outside) * (1 - inside) + inside * through);
    }

    public Spectrum measured(Spectrum inner) {
        return inner.map(this::measured);
    }

    public Spectrum inner(Spectrum measured) {
        return measured.map(this::inner);
    }

    /** Part of diffuse light thrown back from outside: Fresnel's two polarisations summed over the half sphere (Simpson's rule). */
    private static double allSides(double index) {
        int strips = 2000;
        double sum = 0;
        for (int i = 0; i <= strips; i++) {
            double angle = Math.PI / 2 * i / strips;
            int weight = i == 0 || i == strips ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * fresnel(angle, index) * Math.sin(2 * angle);
        }
        return sum * Math.PI / 2 / strips / 3;
    }

    private static double fresnel(double angle, double index) {
        double in = Math.cos(angle);
        double out = Math.sqrt(1 - Math.pow(Math.sin(angle) / index, 2));
        double across = (in - index * out) / (in + index * out);
        double along = (index * in - out) / (index * in + out);
        return (across * across + along * along) / 2;
    }
}
