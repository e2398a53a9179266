package afterlength.craft.varnish;

/**
 * How rich in oil a varnish is, on the scale of old European books: mass of oil to mass of resin. Lean below 1, medium about 1, fat
 * above. The ratio is what is kept; the two other scales are made from it and never from each other, since the same varnish is
 * "medium" on one and "short" on another. Source: docs/sources.md#oil-length-old.
 */
public record OilToResin(double ratio) {
    /** How far from 1 "about equal" reaches; our own choice, the source gives no limit. */
    private static final double ABOUT = 0.1;

    public OilToResin {
        if (!(ratio > 0 && Double.isFinite(ratio))) {
            throw new IllegalArgumentException("oil to resin " + ratio + " is no ratio of two masses");
        }
    }

    /** Classes of this scale alone. */
    public enum Richness {
        LEAN,
        MEDIUM,
        FAT
    }

    public Richness richness() {
        if (Math.abs(ratio - 1) <= ABOUT) {
            return Richness.MEDIUM;
        }
        return ratio < 1 ? Richness.LEAN : Richness.FAT;
    }

    /** The same varnish on the scale of alkyds. */
    public OilPercent inPercent() {
        return new OilPercent(100 * ratio / (1 + ratio));
    }

    /** The same varnish on the scale of American varnish makers. */
    public OilGallons inGallons() {
        return new OilGallons(ratio * 100 / OilGallons.LINSEED_LB_PER_GALLON);
    }

    /** Whether one of the scales calls it long: soft, slow, and perhaps never hard. */
    public boolean slow() {
        return richness() == Richness.FAT
                || inPercent().length() == OilLengthClass.LONG
                || inGallons().length() == OilLengthClass.LONG;
    }
}
