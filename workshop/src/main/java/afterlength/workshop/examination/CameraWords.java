package afterlength.workshop.examination;

import afterlength.sight.picture.CameraKey;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;

/** How cameras and their calibrations are spoken of. */
final class CameraWords {
    private CameraWords() {}

    /** "Invented Camera One, 5.5 mm (as 26 mm), 4032 × 3024 pixels". */
    static String words(CameraKey camera) {
        return camera.camera() + (camera.lens().isEmpty() ? "" : ", " + camera.lens()) + ", " + taking(camera);
    }

    /** "5.5 mm (as 26 mm), 4032 × 3024 pixels". */
    static String taking(CameraKey camera) {
        String as = camera.focal35_mm() > 0 ? " (as " + Figures.plain(camera.focal35_mm()) + " mm)" : "";
        return Figures.plain(camera.focal_mm()) + " mm" + as + ", " + camera.width_px() + " × " + camera.height_px()
                + " pixels";
    }

    /** "calibrated on 2 March 2026 from five pictures, corners within 0.08 pixels". */
    static String calibrated(CalibratedCamera camera) {
        return "calibrated on " + Days.words(Days.day(camera.writtenAt())) + " from "
                + Counted.within(camera.pictures().size(), "picture", "pictures") + ", corners within "
                + Figures.hundredths(camera.residualPx()) + " pixels";
    }

    /** "420 to 610 mm". */
    static String distances(CalibratedCamera camera) {
        return Figures.whole(camera.lens().nearest_mm()) + " to "
                + Figures.whole(camera.lens().farthest_mm()) + " mm";
    }

    /** "3041 ± 2 px", twice the deviation of the calibration alone. */
    static String focal(CalibratedCamera camera) {
        double focal_px = camera.asLaid().focal_px();
        double plusMinus_px = 2 * focal_px * camera.asLaid().logFocal().deviation();
        return Figures.plusMinus(focal_px, plusMinus_px, "px");
    }
}
