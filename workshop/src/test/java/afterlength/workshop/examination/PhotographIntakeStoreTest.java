package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.sight.picture.PictureFile;
import afterlength.workshop.desk.NotHere;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotographIntakeStoreTest {
    /** JPEG smears colours a little; a turned picture would be off by more than 100. */
    private static final int COLOUR_TOLERANCE = 20;

    private static final PhotographWords FRONT = new PhotographWords(Moment.BEFORE, "front", "as received");

    @TempDir
    Path root;

    private ExaminedShop shop;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
    }

    private Taken take(byte[] bytes) {
        return shop.intake.take(shop.visit.id(), new PictureFile("IMG_1.jpg", bytes), FRONT);
    }

    private List<String> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(root.resolve(folder))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theOriginalIsKeptByteForByteUnderItsHash() throws IOException {
        byte[] picture = TestPictures.jpeg(600, 400);
        Photograph kept = ((Taken.Kept) take(picture)).photograph();
        assertThat(kept.widthPx()).isEqualTo(600);
        assertThat(kept.heightPx()).isEqualTo(400);
        assertThat(kept.mediaType()).isEqualTo("image/jpeg");
        assertThat(kept.addedAt()).isEqualTo(ExaminedShop.NOW);
        assertThat(files("photographs")).containsExactly(kept.sha256());
        assertThat(root.resolve("photographs").resolve(kept.sha256())).hasBinaryContent(picture);
        assertThat(shop.photographs.list(shop.visit.id(), Moment.BEFORE)).containsExactly(kept);
        assertThat(shop.photographs.list(shop.visit.id(), Moment.AFTER)).isEmpty();
    }

    @Test
    void theSameBytesAreKeptOnceAndComeBackFromBeingPutAway() {
        byte[] picture = TestPictures.jpeg(60, 40);
        Photograph first = ((Taken.Kept) take(picture)).photograph();
        shop.photographs.putAway(first.id());
        assertThat(shop.photographs.list(shop.visit.id())).isEmpty();
        assertThat(shop.photographs.listPutAway(shop.visit.id())).hasSize(1);
        assertThat(take(picture)).isEqualTo(new Taken.HereAlready("IMG_1.jpg", first));
        assertThat(shop.photographs.list(shop.visit.id())).containsExactly(first);
    }

    @Test
    void aPictureThatCannotBeDecodedLeavesNothingBehind() throws IOException {
        byte[] hollow = TestPictures.claimingPng(20, 20);
        assertThat(take(hollow)).isInstanceOf(Taken.Refused.class);
        assertThat(files("photographs")).isEmpty();
        assertThat(shop.photographs.list(shop.visit.id())).isEmpty();
    }

    /** All eight ways to hold a camera: the sensor's lines are laid so that the turn noted brings red on top. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void smallCopiesStandUpright(int orientation) throws IOException {
        byte[] laid = TestPictures.withCameraNotes(laid(orientation), orientation);
        Photograph photograph = ((Taken.Kept) take(laid)).photograph();
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(shop.small.small(photograph)));
        assertThat(photograph.widthPx()).as("width seen upright").isEqualTo(600);
        assertThat(small.getWidth()).isEqualTo(480);
        assertThat(small.getHeight()).isEqualTo(320);
        assertSame(small.getRGB(240, 40), TestPictures.ABOVE);
        assertSame(small.getRGB(240, 280), TestPictures.BELOW);
    }

    private static byte[] laid(int orientation) {
        BufferedImage upright;
        try {
            upright = ImageIO.read(new ByteArrayInputStream(TestPictures.of("png", 600, 400)));
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        boolean lays = orientation >= 5;
        BufferedImage laid = new BufferedImage(lays ? 400 : 600, lays ? 600 : 400, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 600; x++) {
            for (int y = 0; y < 400; y++) {
                int[] at = sensor(orientation, x, y);
                laid.setRGB(at[0], at[1], upright.getRGB(x, y));
            }
        }
        return TestPictures.written("jpg", laid);
    }

    /** Where an upright pixel of a 600 × 400 picture lay on the sensor. Source: docs/sources.md#exif-orientation. */
    private static int[] sensor(int orientation, int x, int y) {
        return switch (orientation) {
            case 2 -> new int[] {599 - x, y};
            case 3 -> new int[] {599 - x, 399 - y};
            case 4 -> new int[] {x, 399 - y};
            case 5 -> new int[] {y, x};
            case 6 -> new int[] {y, 599 - x};
            case 7 -> new int[] {399 - y, 599 - x};
            case 8 -> new int[] {399 - y, x};
            default -> new int[] {x, y};
        };
    }

    private static void assertSame(int rgb, Color wanted) {
        Color colour = new Color(rgb);
        assertThat(Math.abs(colour.getRed() - wanted.getRed()) + Math.abs(colour.getBlue() - wanted.getBlue()))
                .as("%s instead of %s", colour, wanted)
                .isLessThan(COLOUR_TOLERANCE);
    }

    @Test
    void neitherPlaceNorCameraLeaveTheShopWithACopy() throws Exception {
        byte[] noted = TestPictures.withCameraNotes(TestPictures.jpeg(600, 400), 6);
        assertThat(JpegMetadataReader.readMetadata(new ByteArrayInputStream(noted))
                        .getFirstDirectoryOfType(GpsDirectory.class)
                        .getRationalArray(GpsDirectory.TAG_LATITUDE)[0]
                        .intValue())
                .isEqualTo(48);
        Photograph photograph = ((Taken.Kept) take(noted)).photograph();
        for (byte[] copy : List.of(shop.small.small(photograph), shop.small.forPaper(photograph))) {
            var notes = JpegMetadataReader.readMetadata(new ByteArrayInputStream(copy));
            assertThat(notes.getDirectoriesOfType(GpsDirectory.class)).isEmpty();
            assertThat(notes.getDirectoriesOfType(ExifDirectoryBase.class)).isEmpty();
        }
    }

    @Test
    void copiesForPaperHaveAtMostTwelveHundredPixelsAndSmallPicturesKeepTheirSize() throws IOException {
        assertThat(longest(shop.small.forPaper(shop.take(TestPictures.jpeg(5000, 2500), Moment.BEFORE, "back"))))
                .isEqualTo(1200);
        assertThat(longest(shop.small.forPaper(shop.take(TestPictures.jpeg(90, 70), Moment.BEFORE, "label"))))
                .isEqualTo(90);
        assertThat(longest(shop.small.small(shop.take(TestPictures.of("png", 3000, 1), Moment.BEFORE, "edge"))))
                .isEqualTo(480);
    }

    private static int longest(byte[] jpeg) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
        return Math.max(image.getWidth(), image.getHeight());
    }

    @Test
    void copiesAreMadeAnewWhenSomebodyClearedThem() throws IOException {
        Photograph photograph = shop.take(TestPictures.jpeg(600, 400), Moment.BEFORE, "front");
        byte[] before = shop.small.small(photograph);
        for (String file : files("thumbnails")) {
            Files.delete(root.resolve("thumbnails").resolve(file));
        }
        Files.delete(root.resolve("thumbnails"));
        assertThat(shop.small.small(photograph)).isEqualTo(before);
    }

    @Test
    void aMissingOriginalIsSaidInWords() throws IOException {
        Photograph photograph = shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        Files.delete(root.resolve("photographs").resolve(photograph.sha256()));
        for (String file : files("thumbnails")) {
            Files.delete(root.resolve("thumbnails").resolve(file));
        }
        assertThatThrownBy(() -> shop.small.forPaper(photograph))
                .isInstanceOf(NotHere.class)
                .hasMessage("There is no file of the photograph " + photograph.sha256() + " in this shop.");
    }
}
