package afterlength.sight.picture;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What the camera noted in the file about itself (EXIF). All of it may be missing, and all of it may be wrong: a picture that was
 * cropped, zoomed or saved anew often keeps the old notes. Therefore it is a first guess and never a measure.
 *
 * @param camera make and model, or an empty text
 * @param lens its name, or an empty text
 * @param focal_mm the focal length itself; 0 when not noted
 * @param focal35_mm the focal length that gives the same angle across the diagonal of a 36 × 24 mm frame; 0 when not noted
 * @param width_px size of the picture as the camera noted it, before any turn; 0 when not noted
 * @param zoom how much the camera enlarged by calculation; 1 when not noted
 */
public record CameraNotes(
        String camera, String lens, double focal_mm, double focal35_mm, int width_px, int height_px, double zoom) {
    public static final CameraNotes NONE = new CameraNotes("", "", 0, 0, 0, 0, 1);

    /** The diagonal of a 36 × 24 mm frame. */
    private static final double DIAGONAL_MM = Math.hypot(36, 24);

    /** No size, focal length or zoom comes near; beyond it a file is broken. */
    private static final double LARGEST = 1e6;

    public static CameraNotes of(byte[] bytes) {
        if (FileKind.of(bytes) != FileKind.JPEG) {
            return NONE;
        }
        try {
            return read(JpegMetadataReader.readMetadata(new ByteArrayInputStream(bytes), List.of(new ExifReader())));
        } catch (JpegProcessingException | IOException unreadable) {
            return NONE;
        }
    }

    private static CameraNotes read(Metadata metadata) {
        Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Directory more = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        String camera =
                (text(main, ExifDirectoryBase.TAG_MAKE) + " " + text(main, ExifDirectoryBase.TAG_MODEL)).strip();
        return new CameraNotes(
                camera,
                text(more, ExifDirectoryBase.TAG_LENS_MODEL),
                number(more, ExifDirectoryBase.TAG_FOCAL_LENGTH, 0),
                number(more, ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH, 0),
                (int) number(more, ExifDirectoryBase.TAG_EXIF_IMAGE_WIDTH, 0),
                (int) number(more, ExifDirectoryBase.TAG_EXIF_IMAGE_HEIGHT, 0),
                number(more, ExifDirectoryBase.TAG_DIGITAL_ZOOM_RATIO, 1));
    }

    /** The focal length in pixels of a picture of this size, or nothing. */
    public OptionalDouble findFocal_px(int width_px, int height_px) {
        return focal35_mm > 0
                ? OptionalDouble.of(focal35_mm / DIAGONAL_MM * Math.hypot(width_px, height_px))
                : OptionalDouble.empty();
    }

    /** Whether the noted size, laid either way, is another one than the picture has. */
    public boolean tellAnotherSizeThan(int width_px, int height_px) {
        boolean noted = this.width_px > 0 && this.height_px > 0;
        boolean same = this.width_px == width_px && this.height_px == height_px;
        boolean turned = this.width_px == height_px && this.height_px == width_px;
        return noted && !same && !turned;
    }

    private static String text(@Nullable Directory directory, int tag) {
        String text = directory == null ? null : directory.getString(tag);
        return text == null ? "" : text.strip();
    }

    private static double number(@Nullable Directory directory, int tag, double otherwise) {
        Double number = directory == null ? null : directory.getDoubleObject(tag);
        return number != null && number > 0 && number < LARGEST ? number : otherwise;
    }
}
