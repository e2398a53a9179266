package afterlength.start.demo;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.retouch.PaletteColour;
import afterlength.workshop.retouch.Retouch;
import java.time.Instant;
import java.util.List;

/** The retouch of the viola's crack line: an invented palette, one loss measured, its recipe to be looked at. */
final class ViolaRetouch {
    private static final double CRACK_MM = 31;

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

    /** How far the crack line stood out and stands out, from its two pictures. */
    static void compare(DemoStores stores, Visit visit, String hand) {
        List<DrawnMark> marks = stores.marks().listNow(visit.id());
        stores.lineDesk()
                .byLength(
                        "the crack line at the sound-hole",
                        marks.get(0),
                        marks.get(marks.size() - 1),
                        CRACK_MM,
                        stores.clock().instant(),
                        hand)
                .ifPresent(stores.mendedLines()::add);
    }
}
