package afterlength.workshop.retouch;

import afterlength.sight.camera.Pixel;
import afterlength.sight.colour.PaperLight;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureAnswer;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import afterlength.sight.picture.PictureRefused;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.ledger.Photographs;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Brings a marked line, its photograph, the card in it and the shop's file together, and has the line read. */
public final class LineDesk {
    private static final String NO_CARD =
            "No card in the picture: its light is not known, and its millimetres come from the typed length, as if seen from straight"
                    + " above.";

    private final PhotographStore photographs;
    private final Photographs originals;
    private final CardSearches searches;

    public LineDesk(PhotographStore photographs, Photographs originals, CardSearches searches) {
        this.photographs = photographs;
        this.originals = originals;
        this.searches = searches;
    }

    Photograph photograph(DrawnMark mark) {
        Long id = mark.photographId();
        if (id == null) {
            throw new IllegalArgumentException("mark " + mark.id() + " is on no photograph");
        }
        return photographs.get(id);
    }

    /**
     * Reads a line.
     *
     * @param length_mm of the line, for a picture without a card
     * @param untouched a line on untouched varnish in the same photograph; null for those beside it
     */
    LineAnswer read(DrawnMark mark, @Nullable Double length_mm, @Nullable DrawnMark untouched) {
        Photograph photograph = photograph(mark);
        if (searches.working(photograph)) {
            return new LineAnswer.Refused(
                    "A card is still being looked for in this picture. Press the button again in a few seconds.");
        }
        Optional<MeasuredPhoto> measured = searches.findMeasured(photograph);
        if (measured.isEmpty() && length_mm == null) {
            return new LineAnswer.Refused(
                    "No card was found in this picture. Type the length of the line below, such as 42, or take one with a card.");
        }
        return read(mark, measured, length_mm == null ? 1 : length_mm, untouched);
    }

    /** The same line in two photographs by its known length, whether or not they show a card; empty where one cannot be read. */
    public Optional<MendedLine> byLength(
            String place, DrawnMark before, DrawnMark after, double length_mm, Instant now, String hand) {
        return read(before, Optional.empty(), length_mm, null) instanceof LineAnswer.Read first
                        && read(after, Optional.empty(), length_mm, null) instanceof LineAnswer.Read second
                ? Optional.of(new MendedLine(
                        0, before.visitId(), null, false, place, first.sight(), second.sight(), now, hand))
                : Optional.empty();
    }

    private LineAnswer read(
            DrawnMark mark, Optional<MeasuredPhoto> measured, double length_mm, @Nullable DrawnMark untouched) {
        PictureAnswer answer = opened(photograph(mark));
        if (answer instanceof Picture picture) {
            LinePicture ground = measured.map(photo -> withCard(picture.upright(), photo, mark))
                    .orElseGet(() -> withLength(picture.upright(), mark.points(), length_mm));
            return LineReader.read(
                    ground, mark.id(), mark.points(), untouched == null ? List.of() : List.of(untouched.points()));
        }
        return new LineAnswer.Refused(
                answer instanceof PictureRefused refused ? refused.reason() : "The picture cannot be read.");
    }

    private PictureAnswer opened(Photograph photograph) {
        try {
            byte[] bytes = Files.readAllBytes(originals.file(photograph.sha256()));
            return PictureReader.read(new PictureFile(photograph.title(), bytes));
        } catch (IOException missing) {
            return new PictureRefused("The file of this picture cannot be read. Bring the picture again.");
        }
    }

    private static LinePicture withCard(BufferedImage upright, MeasuredPhoto photo, DrawnMark mark) {
        PaperLight light = PaperLight.of(upright, photo);
        Scale scale = Scale.seen(photo.fitted().view(), mark.height().mm());
        return new LinePicture(upright, scale, light.isWarm(), light.caveats());
    }

    private static LinePicture withLength(BufferedImage upright, List<Pixel> points, double length_mm) {
        double length_px = 0;
        for (int n = 1; n < points.size(); n++) {
            Pixel from = points.get(n - 1);
            Pixel to = points.get(n);
            length_px += Math.hypot(to.x() - from.x(), to.y() - from.y());
        }
        return new LinePicture(upright, Scale.even(length_px / length_mm), false, List.of(NO_CARD));
    }
}
