package afterlength.sight.measure;

import java.util.Locale;

/** What a person should know beside the numbers; a fact each, with its sentence. */
public sealed interface Caveat {
    String text();

    record PrintUnchecked() implements Caveat {
        @Override
        public String text() {
            return "The check lines of this print were not measured; until they are, every length is uncertain by 1 % for that"
                    + " alone.";
        }
    }

    record NoFocalNoted(double tilt_deg) implements Caveat {
        @Override
        public String text() {
            return "The file does not tell the focal length, and the picture was taken nearly from above ("
                    + rounded(tilt_deg)
                    + "°). Lengths in the plane of the card hold; at other heights the ± is larger.";
        }
    }

    record FocalContradicted(double noted_px, double solved_px) implements Caveat {
        @Override
        public String text() {
            return "The file tells a focal length of " + rounded(noted_px) + " pixels, the card shows "
                    + rounded(solved_px) + ": the picture was zoomed, cropped or saved anew. The card is believed.";
        }
    }

    record CalibrationContradicted() implements Caveat {
        @Override
        public String text() {
            return "The calibration of this camera does not fit this picture: the card shows another lens. It was zoomed, a second"
                    + " lens of the telephone took it, or the camera has changed. The calibration is left out here; if that"
                    + " happens again, calibrate anew.";
        }
    }

    record CalibratedElsewhere(double nearest_mm, double farthest_mm, double distance_mm) implements Caveat {
        @Override
        public String text() {
            return "The camera was calibrated from " + rounded(nearest_mm) + " to " + rounded(farthest_mm)
                    + " mm and took this picture from " + rounded(distance_mm)
                    + " mm. A lens focused elsewhere draws a little larger or smaller; the ± allows for it.";
        }
    }

    record AnotherSizeNoted(int width_px, int height_px) implements Caveat {
        @Override
        public String text() {
            return "The file says that the camera took " + width_px + " × " + height_px
                    + " pixels, which this picture does not have: it was cropped or made smaller. Measure in the file as the"
                    + " camera made it.";
        }
    }

    record Covered(int seen, int all) implements Caveat {
        @Override
        public String text() {
            return seen + " of " + all + " corners of the card were seen; the others are covered or in glare.";
        }
    }

    record Soft(double spread_px) implements Caveat {
        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "The picture is a little soft (edges spread over %.1f pixels); marks are harder to set and the ± is larger.",
                    spread_px);
        }
    }

    private static String rounded(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
