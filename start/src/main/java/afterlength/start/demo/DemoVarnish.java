package afterlength.start.demo;

import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.Part;
import afterlength.workshop.retouch.Varnish;
import afterlength.workshop.retouch.VarnishCoat;
import afterlength.workshop.retouch.VarnishStore;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** One invented batch in the varnish book, with four coats that were watched. */
final class DemoVarnish {
    private static final double[] HOURS = {22, 30, 25.5, 27};
    private static final double[] AIR_C = {21, 19, 20, 20};
    private static final double[] AIR_PCT = {46, 58, 50, 52};

    private DemoVarnish() {}

    static void write(VarnishStore book, LocalDate made, Instant now, String hand) {
        long id = book.add(
                new Varnish(
                        0,
                        "oil varnish for edges (invented)",
                        made,
                        "Resin melted, oil added warm, thinned when cool; outdoors, with a lid at hand.",
                        false,
                        now,
                        hand),
                List.of(
                        new Ingredient("linseed oil, boiled", 60, 930, Part.OIL),
                        new Ingredient("colophony, old", 80, 1070, Part.RESIN),
                        new Ingredient("oil of turpentine", 90, 870, Part.SOLVENT)));
        for (int n = 0; n < HOURS.length; n++) {
            book.add(new VarnishCoat(
                    0, id, null, false, made.plusDays(9 + 3L * n), HOURS[n], AIR_C[n], AIR_PCT[n], "", now, hand));
        }
    }
}
