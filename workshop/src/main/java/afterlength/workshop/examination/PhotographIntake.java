package afterlength.workshop.examination;

import afterlength.sight.picture.CameraTurn;
import afterlength.sight.picture.PictureCheck;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureHead;
import afterlength.workshop.ledger.Photographs;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Takes a picture in: looks at it, decodes it once, keeps the untouched file and writes it down. Whatever is wrong with one file
 * is an answer about that file, so that it never keeps the others out.
 */
public final class PhotographIntake {
    private final PhotographStore store;
    private final Photographs originals;
    private final SmallPictures small;
    private final Clock clock;

    public PhotographIntake(PhotographStore store, Photographs originals, SmallPictures small, Clock clock) {
        this.store = store;
        this.originals = originals;
        this.small = small;
        this.clock = clock;
    }

    public Taken take(long visitId, PictureFile file, PhotographWords words) {
        PictureCheck check = PictureCheck.of(file);
        if (check instanceof PictureCheck.Fits fits) {
            return takeChecked(visitId, file, words, fits);
        }
        return new Taken.Refused(file.name(), ((PictureCheck.Refused) check).reason());
    }

    private Taken takeChecked(long visitId, PictureFile file, PhotographWords words, PictureCheck.Fits fits) {
        CameraTurn turn = CameraTurn.of(file.bytes());
        BufferedImage upright;
        try {
            upright = turn.upright(PicturePixels.read(file.bytes()));
        } catch (IOException unreadable) {
            return new Taken.Refused(
                    file.name(),
                    "The picture cannot be decoded (" + unreadable.getMessage()
                            + "). Open it in a picture program and save it as JPEG in ordinary RGB colours.");
        }
        try {
            String sha256 = originals.keep(new ByteArrayInputStream(file.bytes()));
            small.make(sha256, upright);
            return write(file.name(), photograph(visitId, sha256, words, fits, turn));
        } catch (IOException full) {
            return new Taken.Refused(
                    file.name(),
                    "The picture could not be written to the shop's folder (" + full.getMessage()
                            + "). See whether the disk is full, then bring it again.");
        }
    }

    private Taken write(String fileName, Photograph fresh) {
        Optional<Photograph> same = store.findSame(fresh.visitId(), fresh.sha256());
        if (same.isPresent()) {
            store.bringBack(same.get().id());
            return new Taken.HereAlready(fileName, store.get(same.get().id()));
        }
        return new Taken.Kept(fileName, store.get(store.add(fresh)));
    }

    private Photograph photograph(
            long visitId, String sha256, PhotographWords words, PictureCheck.Fits fits, CameraTurn turn) {
        PictureHead head = fits.head();
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        return new Photograph(
                0,
                visitId,
                sha256,
                fits.mediaType(),
                turn.lays() ? head.height_px() : head.width_px(),
                turn.lays() ? head.width_px() : head.height_px(),
                words.moment(),
                words.view(),
                words.caption(),
                now,
                false);
    }
}
