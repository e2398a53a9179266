package afterlength.workshop.examination;

import afterlength.sight.picture.CameraTurn;
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
import net.coobird.thumbnailator.Thumbnails;

/**
 * Smaller JPEG copies of photographs: upright, in sRGB, and made from the pixels alone, so that neither the place where a
 * picture was taken nor the camera's number leaves the shop with them. They are kept in {@code thumbnails/} and made anew when
 * missing. The copy for papers has at most 1200 pixels along its longer edge, about 200 to the inch over the width of a sheet.
 */
public final class SmallPictures {
    static final int SMALL_PX = 480;
    static final int PAPER_PX = 1200;
    private static final double QUALITY = 0.86;

    private final Path folder;
    private final Photographs originals;

    public SmallPictures(ShopFolder shop, Photographs originals) {
        this.folder = shop.thumbnails();
        this.originals = originals;
    }

    /** For lists on pages, at most 480 pixels along the longer edge. */
    public byte[] small(Photograph photograph) {
        return kept(photograph.sha256(), SMALL_PX);
    }

    /** For papers and whatever else is handed out, at most 1200 pixels along the longer edge. */
    public byte[] forPaper(Photograph photograph) {
        return kept(photograph.sha256(), PAPER_PX);
    }

    /**
     * Decodes a picture once, to see that it can be, and keeps its small copies.
     *
     * @throws IOException when it cannot be decoded or the copies cannot be written
     */
    void make(String sha256, BufferedImage upright) throws IOException {
        keep(sha256, PAPER_PX, smaller(upright, PAPER_PX));
        keep(sha256, SMALL_PX, smaller(upright, SMALL_PX));
    }

    private byte[] kept(String sha256, int longest_px) {
        try {
            return Files.readAllBytes(file(sha256, longest_px));
        } catch (NoSuchFileException missing) {
            return remade(sha256, longest_px);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private byte[] remade(String sha256, int longest_px) {
        try {
            byte[] original = Files.readAllBytes(originals.file(sha256));
            byte[] small = smaller(CameraTurn.of(original).upright(PicturePixels.read(original)), longest_px);
            keep(sha256, longest_px, small);
            return small;
        } catch (NoSuchFileException missing) {
            throw new NotHere("file of the photograph", sha256);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Averages down; a picture that is small already keeps its size. */
    private static byte[] smaller(BufferedImage upright, int longest_px) throws IOException {
        int edge_px = Math.min(longest_px, Math.max(upright.getWidth(), upright.getHeight()));
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        Thumbnails.of(upright)
                .size(edge_px, edge_px)
                .outputFormat("jpg")
                .outputQuality(QUALITY)
                .toOutputStream(jpeg);
        return jpeg.toByteArray();
    }

    /** Written beside its place and moved there, so that nobody ever reads half of it. */
    private void keep(String sha256, int longest_px, byte[] jpeg) throws IOException {
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, "making-", ".part");
        try {
            Files.write(part, jpeg);
            Files.move(part, file(sha256, longest_px), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private Path file(String sha256, int longest_px) {
        return folder.resolve(sha256 + "-" + longest_px + ".jpg");
    }
}
