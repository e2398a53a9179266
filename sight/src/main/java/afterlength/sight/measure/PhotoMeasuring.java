package afterlength.sight.measure;

import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.Sighting;
import afterlength.sight.camera.ViewFit;
import afterlength.sight.card.Card;
import afterlength.sight.find.CardFinder;
import afterlength.sight.find.FoundCard;
import afterlength.sight.picture.CameraKey;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureAnswer;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import afterlength.sight.picture.PictureRefused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From a file to a photograph that can be measured in: read, find the card, solve the camera, and look whether the result may be
 * trusted. A picture that may not is refused with the reason, never measured with a warning.
 */
public final class PhotoMeasuring {
    static final int FEWEST_CORNERS = 12;
    static final double LARGEST_RESIDUAL_PX = 0.5;

    /** Beyond this the corners themselves begin to move, at 4 by half a pixel (docs/sources.md#photo-study). */
    static final double SOFTEST_PX = 3;

    private static final double SOFT_PX = 2;

    /** A steady hand with the picture enlarged; one standard deviation. */
    private static final double SHARP_PICKING_PX = 1;

    /** The middle of a soft edge is found to about half of its spread; an assumption of ours, as is the pixel above. */
    private static final double SHARE_OF_SOFTNESS = 0.5;

    private final PhotoRequest request;
    private final Progress progress;

    private PhotoMeasuring(PhotoRequest request, Progress progress) {
        this.request = request;
        this.progress = progress;
    }

    public static PhotoAnswer of(PictureFile file, PhotoRequest request, Progress progress) {
        return new PhotoMeasuring(request, progress).read(file);
    }

    private PhotoAnswer read(PictureFile file) {
        if (stopped(Progress.Step.READING)) {
            return new PhotoAnswer.Cancelled();
        }
        PictureAnswer answer = PictureReader.read(file);
        if (answer instanceof PictureRefused refused) {
            return new PhotoAnswer.Refused(refused.reason());
        }
        return stopped(Progress.Step.FINDING) ? new PhotoAnswer.Cancelled() : find((Picture) answer);
    }

    private PhotoAnswer find(Picture picture) {
        List<FoundCard> cards = CardFinder.find(picture.upright());
        if (cards.isEmpty()) {
            boolean blurred = CardFinder.findsBlurred(picture.upright());
            return refused(blurred ? Refusals.blurredAltogether() : Refusals.noCard());
        }
        FoundCard found = cards.stream().filter(this::isAskedFor).findFirst().orElse(cards.get(0));
        Optional<String> problem = findProblem(found);
        if (problem.isPresent()) {
            return refused(problem.get());
        }
        return stopped(Progress.Step.FITTING) ? new PhotoAnswer.Cancelled() : fit(picture, found);
    }

    private boolean isAskedFor(FoundCard found) {
        return request.card().map(found.card().word()::equals).orElse(true);
    }

    private Optional<String> findProblem(FoundCard found) {
        if (!isAskedFor(found)) {
            return Optional.of(Refusals.anotherCard(request.card().orElse(""), found.card()));
        }
        if (found.softness_px().orElse(0) > SOFTEST_PX) {
            return Optional.of(Refusals.blurred(found.softness_px().orElse(0)));
        }
        return found.corners().size() < FEWEST_CORNERS
                ? Optional.of(Refusals.tooFew(found.corners().size()))
                : Optional.empty();
    }

    private PhotoAnswer fit(Picture picture, FoundCard found) {
        Print print = request.prints().apply(found.card());
        LensGuess anyLens = LensGuess.of(picture.width_px(), picture.height_px(), OptionalDouble.empty());
        List<Sighting> sightings = CornerChoice.of(found, print, anyLens);
        Optional<CameraKey> camera = CameraKey.of(picture);
        LensChoice lens = LensChoice.of(picture, camera.flatMap(request.lenses()), sightings, print);
        FittedView fitted = lens.fitted();
        long outside = cornersOutside(picture, found.card(), print, fitted);
        if (outside > 0) {
            return refused(Refusals.cut(outside, found.card().cornerCount()));
        }
        if (!(fitted.residual_px() <= LARGEST_RESIDUAL_PX)) {
            return refused(Refusals.residual(fitted.residual_px()));
        }
        progress.at(Progress.Step.DONE);
        double softness_px = found.softness_px().orElse(0);
        return new MeasuredPhoto(
                found.card(),
                lens,
                ViewFit.of(print.strained(sightings), lens.guess()).view(),
                camera.map(key -> cardPicture(picture, key, print, sightings, fitted)),
                print,
                picture.width_px(),
                picture.height_px(),
                Math.max(SHARP_PICKING_PX, SHARE_OF_SOFTNESS * softness_px),
                caveats(found.card(), print, lens, softness_px));
    }

    private static CardPicture cardPicture(
            Picture picture, CameraKey camera, Print print, List<Sighting> sightings, FittedView fitted) {
        LaidPicture laid = LaidPicture.of(picture);
        return new CardPicture(
                camera,
                picture.notes().findFocal_px(picture.width_px(), picture.height_px()),
                sightings.stream()
                        .map(one -> new Sighting(one.place(), laid.laid(one.seen())))
                        .toList(),
                print.isChecked(),
                fitted.view().tilt_deg());
    }

    private List<Caveat> caveats(Card card, Print print, LensChoice lens, double softness_px) {
        List<Caveat> caveats = new ArrayList<>();
        print.findCaveat().ifPresent(caveats::add);
        caveats.addAll(lens.caveats());
        int seen = lens.fitted().corners();
        if (seen < card.cornerCount()) {
            caveats.add(new Caveat.Covered(seen, card.cornerCount()));
        }
        if (softness_px > SOFT_PX) {
            caveats.add(new Caveat.Soft(softness_px));
        }
        return caveats;
    }

    private long cornersOutside(Picture picture, Card card, Print print, FittedView fitted) {
        return card.corners().stream()
                .map(corner -> fitted.view().pixel(print.printed(corner.place()), 0))
                .filter(pixel -> isOutside(picture, pixel))
                .count();
    }

    private static boolean isOutside(Picture picture, Pixel pixel) {
        return !(pixel.x() >= 0
                && pixel.y() >= 0
                && pixel.x() <= picture.width_px()
                && pixel.y() <= picture.height_px());
    }

    private boolean stopped(Progress.Step next) {
        progress.at(next);
        return progress.cancelled();
    }

    private static PhotoAnswer refused(String reason) {
        return new PhotoAnswer.Refused(reason);
    }
}
