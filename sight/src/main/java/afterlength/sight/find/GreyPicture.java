package afterlength.sight.find;

import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** Brightness of a picture as the vision library wants it: 30 % red, 59 % green, 11 % blue, as the old television signal weighed them. */
final class GreyPicture {
    private GreyPicture() {}

    static GrayU8 of(BufferedImage picture) {
        GrayU8 grey = new GrayU8(picture.getWidth(), picture.getHeight());
        if (picture.getRaster().getDataBuffer() instanceof DataBufferByte bytes
                && picture.getType() == BufferedImage.TYPE_3BYTE_BGR) {
            fromBytes(bytes.getData(), grey.data);
        } else {
            fromPixels(picture, grey);
        }
        return grey;
    }

    private static void fromBytes(byte[] bgr, byte[] grey) {
        for (int n = 0, at = 0; n < grey.length; n++, at += 3) {
            grey[n] = weighed(bgr[at + 2] & 0xFF, bgr[at + 1] & 0xFF, bgr[at] & 0xFF);
        }
    }

    private static void fromPixels(BufferedImage picture, GrayU8 grey) {
        int[] line = new int[grey.width];
        for (int y = 0; y < grey.height; y++) {
            picture.getRGB(0, y, grey.width, 1, line, 0, grey.width);
            for (int x = 0; x < grey.width; x++) {
                grey.data[y * grey.width + x] = weighed(line[x] >> 16 & 0xFF, line[x] >> 8 & 0xFF, line[x] & 0xFF);
            }
        }
    }

    private static byte weighed(int red, int green, int blue) {
        return (byte) ((30 * red + 59 * green + 11 * blue + 50) / 100);
    }
}
