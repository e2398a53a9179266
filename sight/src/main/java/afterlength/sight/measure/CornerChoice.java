package afterlength.sight.measure;

import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Sighting;
import afterlength.sight.camera.View;
import afterlength.sight.camera.ViewFit;
import afterlength.sight.find.FoundCard;
import afterlength.sight.find.FoundCorner;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Which corners to solve from: all whose number is sure, and of the others those that lie where the sure ones let them be
 * expected. A patch or a bench top may look like one more corner of the board; it lies many pixels aside.
 */
final class CornerChoice {
    /** Far above what blur and noise do to a corner, far below the next thing that could be taken for one. */
    private static final double FARTHEST_PX = 2;

    private final Print print;

    private CornerChoice(Print print) {
        this.print = print;
    }

    static List<Sighting> of(FoundCard found, Print print, LensGuess guess) {
        CornerChoice choice = new CornerChoice(print);
        List<Sighting> sure = choice.sightings(found, FoundCorner::sure);
        if (sure.size() < PhotoMeasuring.FEWEST_CORNERS) {
            return choice.sightings(found, any -> true);
        }
        View view = ViewFit.of(sure, guess).view();
        List<Sighting> all = new ArrayList<>(sure);
        choice.sightings(found, corner -> !corner.sure()).stream()
                .filter(one -> view.pixel(one.place(), 0).distanceTo(one.seen()) <= FARTHEST_PX)
                .forEach(all::add);
        return all;
    }

    private List<Sighting> sightings(FoundCard found, Predicate<FoundCorner> wanted) {
        return found.corners().stream()
                .filter(wanted)
                .map(one -> new Sighting(print.printed(one.corner().place()), one.seen()))
                .toList();
    }
}
