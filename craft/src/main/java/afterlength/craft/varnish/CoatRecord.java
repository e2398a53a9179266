package afterlength.craft.varnish;

/**
 * One coat that was laid and watched.
 *
 * @param touchDry_h from laying it to dry to the touch
 * @param temperature_C of the air while it dried
 * @param humidity_pct of the air while it dried
 */
public record CoatRecord(double touchDry_h, double temperature_C, double humidity_pct) {}
