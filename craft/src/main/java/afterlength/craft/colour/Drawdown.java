package afterlength.craft.colour;

/**
 * One film of a colorant, drawn down on a card and measured.
 *
 * @param thickness_um of the dry film (or the number of coats, if the whole palette is counted in coats)
 * @param ground the bare card under it, measured
 * @param film the film on the card, measured
 */
public record Drawdown(double thickness_um, Spectrum ground, Spectrum film) {}
