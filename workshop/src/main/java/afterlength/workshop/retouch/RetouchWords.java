package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.workshop.desk.Figures;

/** Sentences of this stage. */
final class RetouchWords {
    static final String ON_SCREEN =
            "A screen shows colours only roughly, and its own light is another than the bench's: the figures"
                    + " count, the patches are for orientation.";

    static final String UNDER_LIGHTS =
            ON_SCREEN + " Each row is drawn as an eye sees it that has become used to that light.";

    static final String CLASSES =
            "How a colour is known decides how far it may be off. The figures are from a calculation with"
                    + " invented cameras and prints, not from real varnish.";

    private RetouchWords() {}

    /** "about 1.5 off in daylight, seldom above 4.3, 4.7 under a warm lamp". */
    static String error(ColourClass known) {
        String off = "about " + Figures.fixed(known.typical(), 1) + " off in daylight";
        String seldom = known.seldomAbove().isPresent()
                ? ", seldom above " + Figures.fixed(known.seldomAbove().getAsDouble(), 1)
                : "";
        String lamp = known.underLamp().isPresent()
                ? ", about " + Figures.fixed(known.underLamp().getAsDouble(), 1) + " under a warm lamp"
                : "; under a lamp it is reckoned from the reflectances";
        return off + seldom + lamp;
    }

    /** What the error is of. */
    static String meaning(ColourClass known) {
        return switch (known) {
            case INSTRUMENT -> "Of the colour itself; the instrument's own data sheet comes first.";
            case MEASURED_PATCHES, UNCALIBRATED -> "Of the colour itself.";
            case TRANSFERRED ->
                "Only of the change between two photographs with the same card, in the same kind of light.";
            case ONE_PHOTOGRAPH ->
                "Only of the difference of two places in one photograph; the colours themselves are not known.";
        };
    }

    static String fit(PaletteColour colour, int films) {
        return "Reckoned back from the fit, its " + films + " films come out within ΔE00 "
                + Figures.fixed(colour.largestDifference(), 2) + " of what was measured, in daylight.";
    }

    static String coats(double coats) {
        return Figures.fixed(coats, 2) + (Math.abs(coats - 1) < 0.005 ? " coat" : " coats");
    }
}
