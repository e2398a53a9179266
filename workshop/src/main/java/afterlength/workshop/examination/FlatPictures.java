package afterlength.workshop.examination;

import afterlength.sight.camera.Lens;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.RectifiedPicture;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureAnswer;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.ShopFolder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import net.coobird.thumbnailator.Thumbnails;

/**
 * Photographs as if taken from straight above, in {@code thumbnails/} beside the small copies: derived, named by everything they were
 * drawn from, and drawn anew when missing. One is drawn at a time, for each needs the whole photograph in memory.
 */
public final class FlatPictures {
    private static final double QUALITY = 0.88;

    private final Path folder;
    private final Photographs originals;

    public FlatPictures(ShopFolder shop, Photographs originals) {
        this.folder = shop.thumbnails();
        this.originals = originals;
    }

    /** As JPEG, from the pixels alone. */
    byte[] jpeg(Photograph photograph, MeasuredPhoto photo, FlatSheet sheet) {
        Path file = folder.resolve(name(photograph, photo, sheet));
        try {
            return Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            return made(photograph, photo, sheet, file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private synchronized byte[] made(Photograph photograph, MeasuredPhoto photo, FlatSheet sheet, Path file) {
        try {
            if (Files.isRegularFile(file)) {
                return Files.readAllBytes(file);
            }
            BufferedImage flat = RectifiedPicture.of(
                            upright(photograph),
                            photo.fitted().view(),
                            sheet.height_mm(),
                            sheet.corner(),
                            sheet.opposite(),
                            sheet.px_mm())
                    .picture();
            ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
            Thumbnails.of(flat)
                    .scale(1)
                    .outputFormat("jpg")
                    .outputQuality(QUALITY)
                    .toOutputStream(jpeg);
            keep(file, jpeg.toByteArray());
            return jpeg.toByteArray();
        } catch (NoSuchFileException missing) {
            throw new NotHere("file of the photograph", photograph.sha256());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private BufferedImage upright(Photograph photograph) throws IOException {
        byte[] bytes = Files.readAllBytes(originals.file(photograph.sha256()));
        PictureAnswer answer = PictureReader.read(new PictureFile(photograph.title(), bytes));
        if (answer instanceof Picture picture) {
            return picture.upright();
        }
        throw new NotHere("picture that can be decoded", photograph.sha256());
    }

    /** Written beside its place and moved there, so that nobody ever reads half of it. */
    private void keep(Path file, byte[] jpeg) throws IOException {
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, "making-", ".part");
        try {
            Files.write(part, jpeg);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A camera solved otherwise, from a card measured anew, has another name. */
    private static String name(Photograph photograph, MeasuredPhoto photo, FlatSheet sheet) {
        Lens lens = photo.fitted().view().lens();
        int drawnFrom = (lens.toString()
                        + photo.fitted().view().place(new afterlength.sight.camera.Pixel(0, 0), 0)
                        + photo.print()
                        + sheet.corner()
                        + sheet.opposite()
                        + sheet.px_mm())
                .hashCode();
        return String.format(Locale.ROOT, "%s-flat-%.1f-%08x.jpg", photograph.sha256(), sheet.height_mm(), drawnFrom);
    }
}
