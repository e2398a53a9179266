package afterlength.workshop.examination;

import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoAnswer;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import afterlength.workshop.ledger.Photographs;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/**
 * Looks for the card in photographs, one picture at a time and behind the pages, so that no page waits for it. What was found is
 * derived from the file and kept in memory only; a fitted camera is a few numbers. Whatever goes wrong is an answer about that
 * picture.
 */
public final class CardSearches {
    private final Photographs originals;
    private final CardPrintStore prints;
    private final CalibratedCameraStore cameras;
    private final Executor worker;
    private final Map<Long, CardSearch> byPhotograph = new ConcurrentHashMap<>();

    public CardSearches(Photographs originals, CardPrintStore prints, CalibratedCameraStore cameras) {
        this(originals, prints, cameras, Executors.newSingleThreadExecutor(CardSearches::behind));
    }

    CardSearches(Photographs originals, CardPrintStore prints, CalibratedCameraStore cameras, Executor worker) {
        this.originals = originals;
        this.prints = prints;
        this.cameras = cameras;
        this.worker = worker;
    }

    /** A picture being worked on keeps nobody from leaving the program. */
    private static Thread behind(Runnable work) {
        Thread thread = new Thread(work, "card search");
        thread.setDaemon(true);
        return thread;
    }

    /** The search in this photograph, begun now when there was none. */
    CardSearch of(Photograph photograph) {
        CardSearch fresh = new CardSearch();
        CardSearch known = byPhotograph.putIfAbsent(photograph.id(), fresh);
        if (known != null) {
            return known;
        }
        worker.execute(() -> fresh.end(answer(photograph, fresh)));
        return fresh;
    }

    /** Whether the answer is still to come; the search begins now when there was none. */
    public boolean working(Photograph photograph) {
        return of(photograph).working();
    }

    /** The solved photograph; empty while the card is looked for, and when there is none. */
    public Optional<MeasuredPhoto> findMeasured(Photograph photograph) {
        return of(photograph).findMeasured();
    }

    /** Once more from the beginning. */
    CardSearch again(Photograph photograph) {
        byPhotograph.remove(photograph.id());
        return of(photograph);
    }

    /** The check lines of a card, or a lens, were measured or put aside: whatever was found with others is looked at again when it is asked for. */
    void forgetAll() {
        byPhotograph.clear();
    }

    private PhotoAnswer answer(Photograph photograph, CardSearch search) {
        if (search.cancelled()) {
            return new PhotoAnswer.Cancelled();
        }
        try {
            byte[] bytes = Files.readAllBytes(originals.file(photograph.sha256()));
            PhotoRequest request = new PhotoRequest(
                    Optional.empty(),
                    card -> prints.print(card, photograph.id()),
                    camera -> cameras.find(camera).map(CalibratedCamera::lens));
            PictureFile file = new PictureFile(photograph.title(), bytes);
            PhotoAnswer answer = PhotoMeasuring.of(file, request, search);
            if (answer instanceof MeasuredPhoto photo && PictureReader.read(file) instanceof Picture picture) {
                search.see(CardColours.of(picture.upright(), photo), LensLine.of(photo, cameras));
            }
            return answer;
        } catch (IOException missing) {
            return new PhotoAnswer.Refused("The file of this picture cannot be read. Bring the picture again.");
        } catch (OutOfMemoryError full) {
            return new PhotoAnswer.Refused(
                    "The picture needs more memory than this program may take. Save it with fewer pixels.");
        } catch (RuntimeException broken) {
            return new PhotoAnswer.Refused("The search for a card broke off (" + broken.getMessage()
                    + "). Take the picture again, with the card flat and wholly in it.");
        }
    }
}
