package afterlength.workshop.examination;

import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** The pictures that were brought for a calibration, and what they give; asks again by itself while one is being looked at. */
record GatheredPart(
        boolean working,
        List<GatheredPicture> pictures,
        List<GatheredCamera> cameras,
        Typed typed,
        List<String> hands) {
    private static final int K1_DECIMALS = 4;

    static GatheredPart of(LensGathering gathering, Typed typed, List<String> hands) {
        boolean working = gathering.working();
        return new GatheredPart(working, gathering.list(), working ? List.of() : gathering.cameras(), typed, hands);
    }

    String progress() {
        long waiting = pictures.stream().filter(GatheredPicture::isWaiting).count();
        return (pictures.size() - waiting) + " of " + pictures.size() + " pictures are looked at.";
    }

    static String words(GatheredPicture picture) {
        if (picture.isWaiting()) {
            return picture.name() + ": waits, or is being looked at.";
        }
        return picture.seen() == null
                ? picture.name() + ": of no use. " + picture.reason()
                : picture.name() + ": " + Counted.within(picture.corners(), "corner", "corners")
                        + " of the card, seen at a slant of "
                        + Figures.whole(picture.seen().tilt_deg()) + "°.";
    }

    /** Why there is no calibration yet, or how good it would be. */
    static String words(GatheredCamera camera) {
        if (camera.answer() instanceof LensCalibrationAnswer.Refused refused) {
            return "Not yet. " + refused.reason();
        }
        LensCalibrationAnswer.Calibrated solved = (LensCalibrationAnswer.Calibrated) camera.answer();
        double focal_px = solved.lens().focal_px();
        return "Solved from " + Counted.within(camera.pictures().size(), "picture", "pictures")
                + ": one lens explains all corners within " + Figures.hundredths(solved.residual_px())
                + " pixels; focal length "
                + Figures.plusMinus(
                        focal_px, 2 * focal_px * solved.lens().logFocal().deviation(), "pixels")
                + ", k1 " + Figures.fixed(solved.lens().k1().value(), K1_DECIMALS) + " ± "
                + Figures.fixed(2 * solved.lens().k1().deviation(), K1_DECIMALS)
                + ".";
    }

    static boolean offersKeeping(GatheredCamera camera) {
        return camera.answer() instanceof LensCalibrationAnswer.Calibrated;
    }
}
