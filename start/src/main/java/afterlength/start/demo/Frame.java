package afterlength.start.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;

/**
 * Where the camera stands: which point of the instrument, in its millimetres, lies in the middle of the picture, how many pixels
 * a millimetre has there, and how far the instrument is turned.
 */
record Frame(int width, int height, double middleX_mm, double middleY_mm, double pixelsPerMm, double turn_deg) {

    /** The whole of something between two levels, standing upright in the picture. */
    static Frame whole(DemoView view, double top_mm, double bottom_mm) {
        double usable = view.height() - 150.0;
        double scale = usable / (bottom_mm - top_mm);
        double middle_mm = (top_mm + bottom_mm) / 2 + 18 / scale;
        return new Frame(view.width(), view.height(), 0, middle_mm, scale, 0);
    }

    static Frame close(double middleX_mm, double middleY_mm, double width_mm, double turn_deg) {
        int width = DemoView.CLOSE.width();
        return new Frame(width, DemoView.CLOSE.height(), middleX_mm, middleY_mm, width / width_mm, turn_deg);
    }

    AffineTransform toMm() {
        try {
            return toPixels().createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(
                    "frame of " + pixelsPerMm + " pixels per mm shows nothing; give more than 0", e);
        }
    }

    AffineTransform toPixels() {
        AffineTransform transform = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
        transform.scale(pixelsPerMm, pixelsPerMm);
        transform.rotate(Math.toRadians(turn_deg));
        transform.translate(-middleX_mm, -middleY_mm);
        return transform;
    }
}
