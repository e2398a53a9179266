package afterlength.start.demo;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.retouch.PaletteColour;
import afterlength.workshop.retouch.Retouch;
import java.time.Instant;
import java.util.List;

/** The retouch of the viola's crack line: an invented palette, one loss measured, its recipe to be looked at. */
final class ViolaRetouch {
    private ViolaRetouch() {}

    static void lay(DemoStores stores, Visit visit, long finding, String hand) {
        Instant now = stores.clock().instant();
        DemoVarnish.write(stores.varnishes(), visit.receivedOn().minusDays(40), now, hand);
        List<PaletteColour> palette = new InventedColours()
                .list(hand).stream()
                        .map(colour -> stores.palette().add(colour, now))
                        .toList();
        Spectrum ground = InventedColours.sealedSpruce();
        Spectrum target = InventedColours.oldVarnish();
        stores.retouches()
                .add(
                        new Retouch(
                                0,
                                visit.id(),
                                null,
                                false,
                                finding,
                                "the glued crack line at the sound-hole",
                                ColourClass.INSTRUMENT,
                                true,
                                ground,
                                ColourClass.INSTRUMENT,
                                true,
                                target,
                                3,
                                3,
                                now,
                                hand),
                        palette.stream().map(PaletteColour::id).toList());
    }
}
