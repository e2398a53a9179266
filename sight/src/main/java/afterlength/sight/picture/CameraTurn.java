package afterlength.sight.picture;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * How the camera was held, as it noted in the file (EXIF orientation, 1 to 8): pixels lie as the sensor lay and have to be
 * turned or mirrored to be seen upright. A file without a readable note counts as upright. Only JPEG files are asked.
 */
public record CameraTurn(int orientation) {
    public static final CameraTurn NONE = new CameraTurn(1);

    public static CameraTurn of(byte[] bytes) {
        if (FileKind.of(bytes) != FileKind.JPEG) {
            return NONE;
        }
        try {
            Metadata notes =
                    JpegMetadataReader.readMetadata(new ByteArrayInputStream(bytes), List.of(new ExifReader()));
            ExifIFD0Directory main = notes.getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer noted = main == null ? null : main.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
            return noted == null || noted < 1 || noted > 8 ? NONE : new CameraTurn(noted);
        } catch (JpegProcessingException | IOException unreadable) {
            return NONE;
        }
    }

    /** Whether width and height change places. */
    public boolean lays() {
        return orientation >= 5;
    }

    /** Whether the picture is seen as in a mirror; no turn of a sensor explains that. */
    public boolean mirrors() {
        return orientation == 2 || orientation == 4 || orientation == 5 || orientation == 7;
    }

    public BufferedImage upright(BufferedImage asLaid) {
        return this.equals(NONE)
                ? asLaid
                : ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(orientation))
                        .apply(asLaid);
    }
}
