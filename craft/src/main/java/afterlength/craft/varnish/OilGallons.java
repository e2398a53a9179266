package afterlength.craft.varnish;

/**
 * How rich in oil a varnish is, on the scale of American varnish makers: US gallons of oil to 100 lb of resin. Short below 15,
 * medium to 30, long above (limits remembered). Made for linseed oil; another oil weighs a little different. Source:
 * docs/sources.md#oil-length-gallons.
 */
public record OilGallons(double gallonsPer100Lb) {
    /** Linseed oil of 930 kg/m³ in pounds to the US gallon. Source: docs/sources.md#varnish-densities. */
    static final double LINSEED_LB_PER_GALLON = 0.93 * 3.785411784 / 0.45359237;

    private static final double SHORT_BELOW = 15;
    private static final double LONG_ABOVE = 30;

    public OilLengthClass length() {
        return OilLengthClass.of(gallonsPer100Lb, SHORT_BELOW, LONG_ABOVE);
    }
}
