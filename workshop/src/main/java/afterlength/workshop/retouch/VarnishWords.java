package afterlength.workshop.retouch;

import afterlength.craft.varnish.DryingEstimate;
import afterlength.craft.varnish.Film;
import afterlength.craft.varnish.OilLengthClass;
import afterlength.craft.varnish.OilToResin;
import afterlength.craft.varnish.VarnishBatch;
import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Sentences about a batch, its film and its drying. */
final class VarnishWords {
    static final String FILM_LIMITS =
            "Even films are counted: what soaks in, runs off or stays in the brush is left out, and a film on"
                    + " wood is never even. No measured thickness of an old varnish was found; 10 to 60 µm is remembered.";

    static final String SLOW = "One of the scales calls it long: soft, slow to dry, and perhaps never hard.";

    private VarnishWords() {}

    static String solids(VarnishBatch batch) {
        return Figures.fixed(batch.volumeSolids_pct(), 1) + " % of its volume stays in the film ("
                + Figures.fixed(batch.massSolids_pct(), 1) + " % of its mass); the batch is "
                + Figures.fixed(batch.volume_mL(), 1) + "\u00a0mL, " + Figures.fixed(batch.mass_g(), 1) + "\u00a0g.";
    }

    /** The scale that is kept; the others are made from it and named. */
    static String oldScale(OilToResin oil) {
        return Figures.fixed(oil.ratio(), 2) + " of oil to 1 of resin by mass: "
                + oil.richness().name().toLowerCase(Locale.ROOT) + " on the scale of old books (lean, medium, fat)";
    }

    static List<String> otherScales(OilToResin oil) {
        return List.of(
                Figures.fixed(oil.inPercent().pct(), 0) + " % oil of oil and resin: "
                        + word(oil.inPercent().length()) + " on the scale of alkyds",
                Figures.fixed(oil.inGallons().gallonsPer100Lb(), 1) + " US gallons of oil to 100 lb of resin: "
                        + word(oil.inGallons().length()) + " on the scale of American varnish makers");
    }

    private static String word(OilLengthClass length) {
        return length.name().toLowerCase(Locale.ROOT);
    }

    static String drying(DryingEstimate estimate, boolean oily, DryingAir.@Nullable Mean air) {
        if (estimate instanceof DryingEstimate.Own own) {
            return "Dry to the touch after " + hours(own.typical_h())
                    + (own.coats() < DryingEstimate.ENOUGH_FOR_QUARTERS
                            ? ", all of them after "
                            : ", half of them after ")
                    + hours(own.low_h()) + " to "
                    + hours(own.high_h()) + ", from " + own.coats() + " coats of this batch." + air(own, air);
        }
        int coats = ((DryingEstimate.TooFew) estimate).coats();
        return "Too few coats yet: " + (coats == 0 ? "none is" : coats == 1 ? "one is" : coats + " are") + " recorded, "
                + DryingEstimate.FEWEST + " are needed. Until then common practice holds: "
                + PracticeWait.words(oily) + ".";
    }

    private static String air(DryingEstimate.Own own, DryingAir.@Nullable Mean air) {
        String lately = air == null
                ? ""
                : " Over such a time the air of the shop was " + Figures.fixed(air.temperature_C(), 1) + "\u00a0°C and "
                        + Figures.fixed(air.humidity_pct(), 0) + "\u00a0% lately"
                        + (own.airIsNew() ? "" : ", within what these coats had") + ".";
        return lately
                + (own.airIsNew()
                        ? " The air is outside what these coats had, and no correction for that is known."
                        : "");
    }

    private static String hours(double hours) {
        return Figures.fixed(hours, hours < 10 ? 1 : 0) + "\u00a0h";
    }

    /** "Two coats; 1.9 ± 0.1 mL in all." */
    static String coats(WornArea area, Film film) {
        int coats = film.coats(area.dryUm(), area.wetCoatUm());
        double volume_mL = film.volume_mL(area.dryUm(), area.areaCm2() / 10_000);
        double plusMinus_mL = film.volume_mL(area.dryUm(), area.plusMinusCm2() / 10_000);
        return (coats == 1 ? "One coat" : coats + " coats") + " of at most " + Figures.plain(area.wetCoatUm())
                + " µm wet for " + Figures.plain(area.dryUm()) + " µm dry; "
                + volume(volume_mL, plusMinus_mL)
                + " in all, the ± from the area alone.";
    }

    /** With as many decimals as its ± needs to show at all: a touched-up edge takes hundredths of a millilitre. */
    private static String volume(double volume_mL, double plusMinus_mL) {
        int decimals = (int) Math.max(1, Math.min(6, Math.ceil(-Math.log10(plusMinus_mL))));
        return Figures.fixed(volume_mL, decimals) + "\u00a0±\u00a0" + Figures.fixed(plusMinus_mL, decimals)
                + "\u00a0mL";
    }

    static List<Cautions> cautions(boolean oil) {
        return Cautions.of("solvent uv", oil ? "oil varnish" : "");
    }
}
