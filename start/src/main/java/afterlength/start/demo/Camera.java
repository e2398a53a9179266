package afterlength.start.demo;

import afterlength.craft.geometry.Point;

/**
 * A camera at the lower end of the instrument, looking up along it: distances along the instrument shorten as they do for the
 * eye. Places are given by x to the treble side, y down the instrument, z over the belly; the camera stands on the centre line.
 */
final class Camera {
    private final double y_mm;
    private final double z_mm;
    private final double sine;
    private final double cosine;
    private final double focus;
    private final double middleX;
    private final double middleY;

    /**
     * @param lookY_mm level of the instrument the camera is turned to
     * @param lookZ_mm height over the belly the camera is turned to
     * @param pixelsPerMm size of the picture at the place looked at
     */
    Camera(
            double y_mm,
            double z_mm,
            double lookY_mm,
            double lookZ_mm,
            double pixelsPerMm,
            double middleX,
            double middleY) {
        this.y_mm = y_mm;
        this.z_mm = z_mm;
        double away_mm = Math.hypot(y_mm - lookY_mm, z_mm - lookZ_mm);
        this.sine = (z_mm - lookZ_mm) / away_mm;
        this.cosine = (y_mm - lookY_mm) / away_mm;
        this.focus = pixelsPerMm * away_mm;
        this.middleX = middleX;
        this.middleY = middleY;
    }

    /** The pixel where a place of the instrument is seen. */
    Point seen(double placeX_mm, double placeY_mm, double placeZ_mm) {
        double back_mm = y_mm - placeY_mm;
        double below_mm = z_mm - placeZ_mm;
        double depth_mm = back_mm * cosine + below_mm * sine;
        double down_mm = below_mm * cosine - back_mm * sine;
        return Point.of(middleX + focus * placeX_mm / depth_mm, middleY + focus * down_mm / depth_mm);
    }

    /** The place on the plane z = 0 seen at a pixel; the pixel must lie below the horizon. */
    Point onBelly(double column, double row) {
        double down = (row - middleY) / focus;
        double right = (column - middleX) / focus;
        double fall = sine + down * cosine;
        double depth_mm = z_mm / Math.max(fall, 1e-3);
        return Point.of(right * depth_mm, y_mm - depth_mm * (cosine - down * sine));
    }
}
