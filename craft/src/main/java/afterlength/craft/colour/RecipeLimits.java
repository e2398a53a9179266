package afterlength.craft.colour;

/**
 * What a recipe must keep to.
 *
 * @param colorants at most this many in one recipe, 1 to 3
 * @param film_um the most that all amounts may add up to, in micrometres (or coats, when the palette is given per coat)
 */
public record RecipeLimits(int colorants, double film_um) {
    public static final int MOST_COLORANTS = 3;

    /** Thicker than most retouches; our own choice, to be set by the shop. */
    public static final double USUAL_FILM_UM = 40;
}
