package afterlength.workshop.retouch;

import afterlength.craft.varnish.CoatRecord;
import afterlength.craft.varnish.DryingEstimate;
import afterlength.craft.varnish.Film;
import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.Part;
import afterlength.craft.varnish.VarnishBatch;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A batch with what it comes to and the coats watched.
 *
 * @param air of the shop over the time a coat of it would dry, up to now; null where no logger read it
 */
record VarnishEntry(
        Varnish varnish,
        List<Ingredient> ingredients,
        VarnishBatch batch,
        List<VarnishCoat> coats,
        DryingAir.@Nullable Mean air) {
    /** Asked about before the shop has its own figure. */
    private static final double A_DAY_H = 24;

    /** Air of longer ago says little of the air to come. */
    private static final double LONGEST_H = 240;

    static VarnishEntry of(VarnishStore book, Varnish varnish, DryingAir air, Instant now) {
        List<Ingredient> ingredients = book.ingredients(varnish.id());
        if (VarnishBatch.of(ingredients) instanceof VarnishBatch batch) {
            List<VarnishCoat> coats = book.coats(varnish.id());
            long seconds = Math.round(3600 * usual_h(coats));
            DryingAir.Mean lately = air.over(now.minusSeconds(seconds), now).orElse(null);
            return new VarnishEntry(varnish, ingredients, batch, coats, lately);
        }
        throw new IllegalStateException("batch " + varnish.id() + " was kept although it cannot be counted");
    }

    private static double usual_h(List<VarnishCoat> coats) {
        double usual_h =
                DryingEstimate.of(records(coats), 0, 0) instanceof DryingEstimate.Own own ? own.typical_h() : A_DAY_H;
        return Math.max(1, Math.min(LONGEST_H, usual_h));
    }

    private static List<CoatRecord> records(List<VarnishCoat> coats) {
        return coats.stream().map(VarnishCoat::record).toList();
    }

    Film film() {
        return new Film(batch.volumeSolids_pct());
    }

    boolean oily() {
        return ingredients.stream().anyMatch(one -> one.part() == Part.OIL);
    }

    /** In the air the logger read while such a coat would have dried, or else in air like that of the last coat. */
    String drying() {
        if (coats.isEmpty()) {
            return VarnishWords.drying(new DryingEstimate.TooFew(0), oily(), air);
        }
        VarnishCoat last = coats.get(coats.size() - 1);
        DryingEstimate estimate = air == null
                ? DryingEstimate.of(records(coats), last.temperatureC(), last.humidityPct())
                : DryingEstimate.of(records(coats), air.temperature_C(), air.humidity_pct());
        return VarnishWords.drying(estimate, oily(), air);
    }
}
