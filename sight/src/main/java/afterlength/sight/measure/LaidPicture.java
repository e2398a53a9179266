package afterlength.sight.measure;

import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Pixel;
import afterlength.sight.picture.CameraTurn;
import afterlength.sight.picture.Picture;

/**
 * From the upright picture to the way its pixels lay behind the lens, and back. A lens belongs to its sensor: its axis meets the
 * picture left of the middle when the camera was held level and above the middle when it was held upright.
 *
 * @param turn from laid to upright; a mirrored one is none here
 * @param width_px of the picture as laid
 */
record LaidPicture(CameraTurn turn, int width_px, int height_px) {
    LaidPicture {
        if (turn.mirrors()) {
            throw new IllegalArgumentException("no sensor lies mirrored: orientation " + turn.orientation());
        }
    }

    static LaidPicture of(Picture picture) {
        boolean lays = picture.turn().lays();
        return new LaidPicture(
                picture.turn(),
                lays ? picture.height_px() : picture.width_px(),
                lays ? picture.width_px() : picture.height_px());
    }

    /** EXIF orientations 3, 6 and 8 are turns by a half, a quarter to the right, and a quarter to the left. */
    Pixel laid(Pixel upright) {
        return switch (turn.orientation()) {
            case 3 -> new Pixel(width_px - upright.x(), height_px - upright.y());
            case 6 -> new Pixel(upright.y(), height_px - upright.x());
            case 8 -> new Pixel(width_px - upright.y(), upright.x());
            default -> upright;
        };
    }

    Pixel upright(Pixel laid) {
        return switch (turn.orientation()) {
            case 3 -> new Pixel(width_px - laid.x(), height_px - laid.y());
            case 6 -> new Pixel(height_px - laid.y(), laid.x());
            case 8 -> new Pixel(laid.y(), width_px - laid.x());
            default -> laid;
        };
    }

    /** A lens of the sensor, as the upright picture shows it. */
    LensGuess upright(LensGuess laid) {
        Pixel centre =
                upright(new Pixel(laid.centreX_px().value(), laid.centreY_px().value()));
        boolean lays = turn.lays();
        return new LensGuess(
                laid.logFocal(),
                laid.k1(),
                (lays ? laid.centreY_px() : laid.centreX_px()).at(centre.x()),
                (lays ? laid.centreX_px() : laid.centreY_px()).at(centre.y()));
    }
}
