package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.sight.measure.CardPicture;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoAnswer;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.measure.Print;
import afterlength.sight.measure.Progress;
import afterlength.sight.picture.CameraKey;
import afterlength.sight.picture.PictureFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Function;

/**
 * Pictures of a card brought to calibrate cameras, until a calibration is kept or they are cleared away. They are looked at one
 * after the other behind the pages. Only what their corners tell is kept, in memory; a picture that is refused keeps none of
 * the others out, and one more can always be brought.
 */
public final class LensGathering {
    static final int MOST = 24;

    private static final String UNNOTED =
            "The file does not tell camera and focal length as the camera took it: it was cropped,"
                    + " zoomed, sent through a program that removes its notes, or is no JPEG. Bring the file as the camera made it.";

    private final Executor worker;
    private final List<GatheredPicture> pictures = new ArrayList<>();
    private long lastId;
    private int cleared;

    public LensGathering() {
        this(Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "lens gathering");
            thread.setDaemon(true);
            return thread;
        }));
    }

    LensGathering(Executor worker) {
        this.worker = worker;
    }

    /** Answers false when there is no room for it, or exactly this file is here already. */
    boolean bring(PictureFile file, String sha256, Function<Card, Print> prints) {
        GatheredPicture fresh;
        int round;
        synchronized (this) {
            boolean here = pictures.stream()
                    .anyMatch(one -> one.sha256().equals(sha256) && one.reason().isEmpty());
            if (here || pictures.size() >= MOST) {
                return false;
            }
            fresh = GatheredPicture.waiting(++lastId, file.name(), sha256);
            pictures.removeIf(one -> one.sha256().equals(sha256));
            pictures.add(fresh);
            round = cleared;
        }
        worker.execute(() -> put(looked(file, fresh, prints, round)));
        return true;
    }

    private GatheredPicture looked(PictureFile file, GatheredPicture fresh, Function<Card, Print> prints, int round) {
        try {
            PhotoRequest request = new PhotoRequest(Optional.empty(), prints, any -> Optional.empty());
            PhotoAnswer answer = PhotoMeasuring.of(file, request, progress(round, fresh.id()));
            if (answer instanceof MeasuredPhoto photo) {
                return photo.findCardPicture().map(fresh::seen).orElseGet(() -> fresh.refused(UNNOTED));
            }
            return fresh.refused(
                    answer instanceof PhotoAnswer.Refused refused ? refused.reason() : "It was taken out.");
        } catch (RuntimeException | OutOfMemoryError broken) {
            return fresh.refused(
                    "The search for a card broke off (" + broken.getMessage() + "). Take the picture again.");
        }
    }

    private Progress progress(int round, long id) {
        return new Progress() {
            @Override
            public void at(Step step) {}

            @Override
            public boolean cancelled() {
                synchronized (LensGathering.this) {
                    return cleared != round || pictures.stream().noneMatch(one -> one.id() == id);
                }
            }
        };
    }

    private synchronized void put(GatheredPicture looked) {
        pictures.replaceAll(one -> one.id() == looked.id() ? looked : one);
    }

    synchronized List<GatheredPicture> list() {
        return List.copyOf(pictures);
    }

    synchronized boolean working() {
        return pictures.stream().anyMatch(GatheredPicture::isWaiting);
    }

    synchronized void takeOut(long id) {
        pictures.removeIf(one -> one.id() == id);
    }

    synchronized void takeOut(List<GatheredPicture> gone) {
        pictures.removeAll(gone);
    }

    synchronized void clear() {
        pictures.clear();
        cleared++;
    }

    /** What was gathered, camera by camera, in the order of bringing. */
    List<GatheredCamera> cameras() {
        Map<CameraKey, List<GatheredPicture>> byCamera = new LinkedHashMap<>();
        for (GatheredPicture picture : list()) {
            CardPicture seen = picture.seen();
            if (seen != null) {
                byCamera.computeIfAbsent(seen.camera(), any -> new ArrayList<>())
                        .add(picture);
            }
        }
        return byCamera.entrySet().stream()
                .map(entry -> GatheredCamera.of(entry.getKey(), entry.getValue()))
                .toList();
    }
}
