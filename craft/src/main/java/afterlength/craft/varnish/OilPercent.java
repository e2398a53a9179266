package afterlength.craft.varnish;

/**
 * How rich in oil a binder is, on the scale of alkyds: oil in per cent of oil and resin by mass. Short below 40, medium to 60, long
 * above: soft, slow to dry, and for varnish of an instrument perhaps never hard. Source: docs/sources.md#oil-length-alkyd.
 */
public record OilPercent(double pct) {
    private static final double SHORT_BELOW = 40;
    private static final double LONG_ABOVE = 60;

    public OilLengthClass length() {
        return OilLengthClass.of(pct, SHORT_BELOW, LONG_ABOVE);
    }
}
