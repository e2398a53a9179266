package afterlength.sight.measure;

import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;
import java.util.List;
import java.util.Optional;

/** A photograph whose camera is solved: every mark set on it can be measured. */
public final class MeasuredPhoto implements PhotoAnswer {
    private final Card card;
    private final LensChoice lens;
    private final Optional<CardPicture> cardPicture;
    private final Print print;
    private final int width_px;
    private final int height_px;
    private final List<Caveat> caveats;
    private final MarkMeasuring measuring;

    MeasuredPhoto(
            Card card,
            LensChoice lens,
            View otherPrint,
            Optional<CardPicture> cardPicture,
            Print print,
            int width_px,
            int height_px,
            double picking_px,
            List<Caveat> caveats) {
        this.card = card;
        this.lens = lens;
        this.cardPicture = cardPicture;
        this.print = print;
        this.width_px = width_px;
        this.height_px = height_px;
        this.caveats = List.copyOf(caveats);
        this.measuring = new MarkMeasuring(lens.fitted(), otherPrint, card, print, picking_px);
    }

    public MarkAnswer measure(Mark mark) {
        return measuring.measure(mark);
    }

    public Card card() {
        return card;
    }

    /** The camera, for whoever draws over the picture. */
    public FittedView fitted() {
        return lens.fitted();
    }

    public LensSource lensSource() {
        return lens.source();
    }

    /** The calibration that was used. */
    public Optional<KnownLens> findKnownLens() {
        return lens.known();
    }

    /** What the picture tells of its camera; nothing when the camera did not note itself, or not as taken. */
    public Optional<CardPicture> findCardPicture() {
        return cardPicture;
    }

    /** The print of the card, for whoever looks for a place on it. */
    public Print print() {
        return print;
    }

    public int width_px() {
        return width_px;
    }

    public int height_px() {
        return height_px;
    }

    public List<Caveat> caveats() {
        return caveats;
    }
}
