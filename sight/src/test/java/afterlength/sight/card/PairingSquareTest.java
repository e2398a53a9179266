package afterlength.sight.card;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing itself is read again, module by module from its SVG, as a camera would see it. */
class PairingSquareTest {
    private static final int PX = 6;

    @ParameterizedTest
    @ValueSource(
            strings = {"https://192.168.1.40:4171/pair?code=00412345", "https://10.0.0.7:4171/pair?code=99999999", "a"})
    void aCameraReadsTheAddressBack(String address) {
        QrCodeDetector<GrayU8> camera = FactoryFiducial.qrcode(null, GrayU8.class);
        camera.process(seen(PairingSquare.svg(address)));
        assertThat(camera.getDetections()).hasSize(1);
        assertThat(camera.getDetections().get(0).message).isEqualTo(address);
    }

    @Test
    void fourModulesOfQuietStandAround() {
        Matcher dark = Pattern.compile("M(\\d+) (\\d+)h1").matcher(PairingSquare.svg("https://10.0.0.7:4171/pair"));
        int first = Integer.MAX_VALUE;
        while (dark.find()) {
            first = Math.min(first, Math.min(Integer.parseInt(dark.group(1)), Integer.parseInt(dark.group(2))));
        }
        assertThat(first).isEqualTo(4);
    }

    private static GrayU8 seen(String svg) {
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) ").matcher(svg);
        assertThat(box.find()).isTrue();
        int size = Integer.parseInt(box.group(1)) * PX;
        GrayU8 picture = new GrayU8(size, size);
        java.util.Arrays.fill(picture.data, (byte) 255);
        Matcher dark = Pattern.compile("M(\\d+) (\\d+)h1").matcher(svg);
        while (dark.find()) {
            for (int n = 0; n < PX * PX; n++) {
                picture.set(
                        Integer.parseInt(dark.group(1)) * PX + n % PX,
                        Integer.parseInt(dark.group(2)) * PX + n / PX,
                        0);
            }
        }
        return picture;
    }
}
