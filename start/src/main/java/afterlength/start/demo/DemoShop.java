package afterlength.start.demo;

import afterlength.craft.units.Money;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.work.Material;
import afterlength.workshop.work.MaterialStore;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;

/**
 * The demonstration: a workshop of two with eight instruments at different stages, and one case told to its end, with the air of
 * the room and a glue pot. The workshop, the
 * people, the instruments, their stories, figures and pictures are invented.
 */
public final class DemoShop {
    private static final Settings INVENTED = new Settings(
            "Workshop by the Old Ferry",
            "3 Ferry Lane\nLower Aldern (invented)",
            List.of("Ines Marbach", "Tomas Lindqvist"),
            "EUR",
            new Money(68_00),
            200,
            false,
            LocalTime.of(17, 30),
            true);

    /** Counted in plans laid out, so that every demonstration of one day begins with the same plan. */
    private static final long LAYINGS = 4000;

    private DemoShop() {}

    /**
     * Fills an empty shop.
     *
     * @param today the moment up to which the demonstration has been lived
     * @return the visit of the main case
     */
    public static Visit fill(DemoStores stores, Instant today) throws IOException {
        stores.settings().put(INVENTED);
        DemoShelf shelf = DemoShelf.stock(stores.materials());
        Visit viola = new ViolaCase(stores, shelf, today).tell();
        new OtherCases(stores, shelf, today).tell();
        stores.clock().set(today);
        DemoAir.keep(stores, today, INVENTED.usualHand());
        DemoPot.warm(stores, today, INVENTED.usualHand());
        stores.plans().planAndTake("the demonstration begins", INVENTED.usualHand(), LAYINGS);
        return viola;
    }

    /** The materials that the cases use. */
    record DemoShelf(
            Material glue, Material spruce, Material fill, Material retouch, Material pegPaste, Material isolation) {

        static DemoShelf stock(MaterialStore store) {
            return new DemoShelf(
                    store.add(of(
                            "hot hide glue, 1 : 1.8",
                            "glue",
                            "mixed on Mondays",
                            "warm water",
                            "One working day hot, then fresh.")),
                    store.add(of(
                            "spruce for cleats, old",
                            "wood",
                            "plank S3",
                            "warm water (the glue line)",
                            "Quartered, 1.8 mm.")),
                    store.add(of(
                            "fill of hide glue and fine spruce dust",
                            "fill",
                            "F11",
                            "warm water",
                            "Thin layers, dry between.")),
                    store.add(of(
                            "spirit retouch varnish, golden",
                            "retouch",
                            "R4",
                            "alcohol, over an isolating layer",
                            "Thin coats; ventilate.")),
                    store.add(of("peg paste", "fitting", "P1", "wiped off dry", "Little.")),
                    store.add(of(
                            "isolating layer, thin shellac",
                            "varnish",
                            "I2",
                            "alcohol",
                            "Between original varnish and retouch.")));
        }

        private static Material of(String name, String kind, String batch, String reversibleWith, String remark) {
            return new Material(0, name, kind, batch, reversibleWith, remark, false, 1);
        }
    }
}
