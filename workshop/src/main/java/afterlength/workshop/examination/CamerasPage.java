package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The shop's cameras: what is calibrated, and pictures on their way to a calibration.
 *
 * @param justPutAside what can be taken back with one touch, or null
 * @param typed the form that brings pictures
 * @param cardTyped the form for the check lines of a card
 */
record CamerasPage(
        Frame frame,
        List<CalibratedCamera> cameras,
        @Nullable CalibratedCamera justPutAside,
        GatheredPart gathered,
        List<CardPrint> prints,
        Typed typed,
        Typed cardTyped) {
    List<CalibratedCamera> inUse() {
        return cameras.stream().filter(camera -> !camera.putAside()).toList();
    }

    List<CalibratedCamera> putAside() {
        return cameras.stream().filter(CalibratedCamera::putAside).toList();
    }

    /** Whether pictures are measured with it, or a newer one of the same camera took its place. */
    boolean holds(CalibratedCamera camera) {
        return inUse().stream()
                        .filter(other -> other.camera().equals(camera.camera()))
                        .findFirst()
                        .orElseThrow()
                        .id()
                == camera.id();
    }

    String answer() {
        long holding = inUse().stream().filter(this::holds).count();
        return holding == 0
                ? "No camera is calibrated yet. Photographs are measured all the same: the card in each tells its lens, as far as it"
                        + " reaches."
                : Counted.words((int) holding, "camera is", "cameras are")
                        + " calibrated. A later picture of the same camera, focal length and size is measured with it where the card"
                        + " in that picture agrees.";
    }
}
