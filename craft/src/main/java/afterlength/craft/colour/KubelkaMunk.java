package afterlength.craft.colour;

/**
 * The two-flux theory of Kubelka and Munk: light going down and up through a film that absorbs (K) and scatters (S), on a ground.
 * Reflectances are those inside the film; for what the eye sees of them through its surface see {@link Saunderson}. Sound for
 * opaque coats, disputed for clear ones; wood's lustre and fluorescence are left out. Source: docs/sources.md#kubelka-munk.
 */
public final class KubelkaMunk {
    /** Below this optical thickness the exponential is replaced by its first terms. */
    private static final double THIN = 1e-6;

    private KubelkaMunk() {}

    /**
     * Reflectance of a film on a ground. The closed form {@code (1 − Rg(a − b·coth bSX)) / (a − Rg + b·coth bSX)} multiplied out so
     * that no division is by S: it stays whole for a glaze without scatter, a white without absorption and no film at all.
     *
     * @param absorption K per unit of thickness, not negative
     * @param scatter S per unit of thickness, not negative
     * @param thickness of the film, in the same unit
     * @param ground reflectance under the film, 0 to 1
     */
    public static double overGround(double absorption, double scatter, double thickness, double ground) {
        double extinction = Math.sqrt(absorption * (absorption + 2 * scatter));
        double depth = extinction * thickness;
        double once = depth < THIN ? 2 * thickness * (1 - depth) : -Math.expm1(-2 * depth) / extinction;
        double both = 2 - once * extinction;
        double darkened = (absorption + scatter) * once;
        return (scatter * once - ground * (darkened - both)) / (darkened + both - ground * scatter * once);
    }

    /** Reflectance of a film so thick that its ground does not matter. */
    public static double opaque(double absorption, double scatter) {
        double ratio = absorption / scatter;
        return 1 / (1 + ratio + Math.sqrt(ratio * (ratio + 2)));
    }

    /**
     * K and S of a film from its reflectances over two grounds, exactly. Point by point it is of use only for films that scatter:
     * over black a glaze gives back almost nothing and S drowns in noise; for those see {@link DrawdownFit}.
     */
    public static Film between(
            double onFirst, double firstGround, double onSecond, double secondGround, double thickness) {
        double a = ((onFirst - firstGround) * (1 + onSecond * secondGround)
                        - (onSecond - secondGround) * (1 + onFirst * firstGround))
                / (2 * (onFirst * secondGround - onSecond * firstGround));
        double b = Math.sqrt(a * a - 1);
        double bCoth = (1 - a * (onFirst + firstGround) + onFirst * firstGround) / (onFirst - firstGround);
        double ratio = b / bCoth;
        double scatter = 0.5 * Math.log1p(2 * ratio / (1 - ratio)) / (b * thickness);
        return new Film(scatter * (a - 1), scatter);
    }

    /** What a film absorbs and scatters, per unit of thickness. */
    public record Film(double absorption, double scatter) {}
}
