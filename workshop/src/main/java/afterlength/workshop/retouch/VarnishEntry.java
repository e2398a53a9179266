package afterlength.workshop.retouch;

import afterlength.craft.varnish.CoatRecord;
import afterlength.craft.varnish.DryingEstimate;
import afterlength.craft.varnish.Film;
import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.Part;
import afterlength.craft.varnish.VarnishBatch;
import java.util.List;

/** A batch with what it comes to and the coats watched. */
record VarnishEntry(Varnish varnish, List<Ingredient> ingredients, VarnishBatch batch, List<VarnishCoat> coats) {
    static VarnishEntry of(VarnishStore book, Varnish varnish) {
        List<Ingredient> ingredients = book.ingredients(varnish.id());
        if (VarnishBatch.of(ingredients) instanceof VarnishBatch batch) {
            return new VarnishEntry(varnish, ingredients, batch, book.coats(varnish.id()));
        }
        throw new IllegalStateException("batch " + varnish.id() + " was kept although it cannot be counted");
    }

    Film film() {
        return new Film(batch.volumeSolids_pct());
    }

    boolean oily() {
        return ingredients.stream().anyMatch(one -> one.part() == Part.OIL);
    }

    /** In air like that of the last coat. */
    String drying() {
        List<CoatRecord> records = coats.stream().map(VarnishCoat::record).toList();
        VarnishCoat last = coats.isEmpty() ? null : coats.get(coats.size() - 1);
        return VarnishWords.drying(DryingEstimate.of(
                records, last == null ? 20 : last.temperatureC(), last == null ? 50 : last.humidityPct()));
    }
}
