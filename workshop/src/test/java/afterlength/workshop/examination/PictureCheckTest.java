package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.picture.FileKind;
import afterlength.sight.picture.PictureCheck;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureHead;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file is, is told from its bytes before anything is decoded. */
class PictureCheckTest {
    private static PictureCheck check(byte[] bytes) {
        return PictureCheck.of(new PictureFile("photo.jpg", bytes));
    }

    private static String reason(byte[] bytes) {
        return ((PictureCheck.Refused) check(bytes)).reason();
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void aJpegAndAPngTellTheirSize() {
        assertThat(check(TestPictures.jpeg(60, 40)))
                .isEqualTo(new PictureCheck.Fits(FileKind.JPEG, new PictureHead(60, 40, true)));
        assertThat(check(TestPictures.of("png", 30, 70)))
                .isEqualTo(new PictureCheck.Fits(FileKind.PNG, new PictureHead(30, 70, true)));
    }

    @Test
    void aGifCalledJpgIsNamedForWhatItIs() {
        assertThat(reason(TestPictures.of("gif", 10, 10)))
                .isEqualTo("The file is a GIF picture, whatever its name says. "
                        + "Pictures are taken as JPEG or PNG; open it and save it as JPEG.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "....ftypheic....|a HEIC picture, as some telephones make them",
                "....ftypmif1....|a HEIC picture, as some telephones make them",
                "....ftypavif....|an AVIF picture",
                "....ftypisom....|a film",
                "RIFF....WEBPVP8 |a WebP picture",
                "BM..............|a BMP picture",
                "%PDF-1.7........|a PDF document",
                "<svg xmlns='....|no kind of picture that this program knows",
                "J               |no kind of picture that this program knows"
            })
    void otherKindsAreNamed(String bytes, String words) {
        assertThat(reason(latin(bytes)))
                .isEqualTo("The file is " + words + ", whatever its name says. "
                        + "Pictures are taken as JPEG or PNG; open it and save it as JPEG.");
    }

    @Test
    void anEmptyFileIsRefused() {
        assertThat(reason(new byte[0])).isEqualTo("The file is empty. Copy it from the camera again.");
    }

    @Test
    void aPictureOfNineHundredMillionPixelsIsRefusedByItsHeader() {
        assertThat(reason(TestPictures.claimingPng(30_000, 30_000)))
                .isEqualTo("The picture is 30000 × 30000 pixels (900 million); at most 100 million fit, "
                        + "and 30000 along one edge. Save it with fewer pixels.");
        assertThat(reason(TestPictures.claimingPng(30_001, 1)))
                .isEqualTo("The picture is 30001 × 1 pixels (0 million); at most 100 million fit, "
                        + "and 30000 along one edge. Save it with fewer pixels.");
    }

    @Test
    void aFileThatIsTooLargeIsRefusedByItsLength() {
        byte[] large = Arrays.copyOf(TestPictures.jpeg(60, 40), (int) PictureFile.LARGEST_BYTES + 1);
        assertThat(reason(large)).isEqualTo("The file has more than 60 MB; save it as JPEG with fewer pixels.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void noFileThatWasCutShortIsTaken(String format) {
        byte[] whole = TestPictures.of(format, 60, 40);
        for (int length = 1; length < whole.length - 12; length++) {
            assertThat(check(Arrays.copyOf(whole, length)))
                    .as("%s cut at %d of %d", format, length, whole.length)
                    .isInstanceOf(PictureCheck.Refused.class);
        }
    }

    @Test
    void aCutInTheMiddleIsToldInWords() {
        byte[] whole = TestPictures.jpeg(600, 400);
        assertThat(reason(Arrays.copyOf(whole, whole.length / 2)))
                .isEqualTo(
                        "The file is only a part of a JPEG picture: its end is missing. Copy it from the camera again.");
        assertThat(reason(Arrays.copyOf(whole, 30)))
                .isEqualTo("The file begins like a JPEG picture but ends before it tells its size. "
                        + "Copy it from the camera again.");
    }

    /** A thumbnail within the camera's notes has an end mark of its own, and must not stand for the picture's. */
    @Test
    void anEndMarkInsideTheCamerasNotesIsNotTheEnd() {
        byte[] noted = TestPictures.withCameraNotes(TestPictures.jpeg(60, 40), 1);
        noted[60] = (byte) 0xFF;
        noted[61] = (byte) 0xD9;
        assertThat(check(noted)).isEqualTo(new PictureCheck.Fits(FileKind.JPEG, new PictureHead(60, 40, true)));
        assertThat(check(Arrays.copyOf(noted, noted.length - 40))).isInstanceOf(PictureCheck.Refused.class);
    }

    @Test
    void noBytesAtAllMakeTheCheckFail() {
        long seed = 20_260_302;
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 4000; n++) {
            byte[] bytes = n % 2 == 0 ? TestPictures.of("jpg", 16, 16) : TestPictures.of("png", 16, 16);
            for (int change = 0; change < 6; change++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            assertThat(check(bytes)).as("seed %d, round %d", seed, n).isNotNull();
        }
    }
}
