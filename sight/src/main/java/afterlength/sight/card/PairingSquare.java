package afterlength.sight.card;

import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.alg.fiducial.qrcode.QrCodeEncoder;
import boofcv.alg.fiducial.qrcode.QrCodeGeneratorImage;
import boofcv.struct.image.GrayU8;

/**
 * An address as a square that a tablet's camera reads (a QR code), drawn as SVG: one unit to the module, four modules of quiet around,
 * as the standard asks.
 */
public final class PairingSquare {
    private static final int QUIET = 4;
    private static final int DARK_BELOW = 128;

    private PairingSquare() {}

    public static String svg(String address) {
        GrayU8 modules = modules(address);
        int size = modules.width;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + size + " " + size
                + "\" width=\"240\" height=\"240\" shape-rendering=\"crispEdges\" role=\"img\" aria-label=\"Square to be"
                + " photographed with the tablet\"><rect width=\"" + size + "\" height=\"" + size
                + "\" fill=\"#ffffff\"/><path fill=\"#000000\" d=\"" + path(modules) + "\"/></svg>";
    }

    private static String path(GrayU8 modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.height; y++) {
            for (int x = 0; x < modules.width; x++) {
                if (modules.get(x, y) < DARK_BELOW) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }

    private static GrayU8 modules(String address) {
        QrCode square = new QrCodeEncoder()
                .setError(QrCode.ErrorLevel.M)
                .addAutomatic(address)
                .fixate();
        QrCodeGeneratorImage drawing = new QrCodeGeneratorImage(1);
        drawing.setBorderModule(QUIET);
        return drawing.render(square).getGray();
    }
}
