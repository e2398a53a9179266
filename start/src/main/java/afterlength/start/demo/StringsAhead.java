package afterlength.start.demo;

import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Strings;
import java.awt.Color;

/** The strings over the bridge: from the board up to its crown, and from the crown down to the tailpiece. */
final class StringsAhead {
    static final double[] BREADTH_MM = {1.05, 0.95, 0.85, 0.6};
    private static final double PIXELS_PER_MM = 14;

    private final Setting setting;
    private final boolean isNew;

    StringsAhead(Setting setting) {
        this.setting = setting;
        this.isNew = setting.instrument().isSetUpAnew();
    }

    void paintBehindBridge() {
        double fall_mm = isNew ? 17.5 : 12.5;
        for (int i = 0; i < Strings.COUNT; i++) {
            double x_mm = Strings.onBridge(setting.instrument().shape(), i).x_mm();
            double z_mm = setting.crown_mm(x_mm) - 0.3;
            Point far = setting.camera().seen(x_mm * 0.82, setting.stop_mm() - 170, z_mm - fall_mm);
            Point onBridge = setting.camera().seen(x_mm, setting.stop_mm(), z_mm);
            double breadth = BREADTH_MM[i] * PIXELS_PER_MM;
            paint(new StringBand(far, onBridge, breadth * 0.62, breadth * 0.95));
        }
    }

    void paintBeforeBridge() {
        for (int i = 0; i < Strings.COUNT; i++) {
            double x_mm = Strings.onBridge(setting.instrument().shape(), i).x_mm();
            Point onBridge = setting.camera().seen(x_mm, setting.stop_mm() + 1.2, setting.crown_mm(x_mm) - 0.3);
            double fretZ_mm = setting.tailpiece_mm(setting.fret_mm()) + 1.2;
            Point near = setting.camera().seen(x_mm * 0.84, setting.fret_mm(), fretZ_mm);
            double breadth = BREADTH_MM[i] * PIXELS_PER_MM;
            paint(new StringBand(onBridge, near, breadth, breadth * 1.3));
        }
    }

    /** Body of the string, the light on it, and the fine lines of its winding. */
    private void paint(StringBand band) {
        Canvas canvas = setting.canvas();
        canvas.fill(band.between(-1, 1), isNew ? new Color(96, 94, 92) : new Color(70, 60, 46));
        canvas.fill(band.between(-0.62, 0.22), isNew ? new Color(214, 212, 206) : new Color(142, 128, 102));
        canvas.stroke(band.winding(3.2), 1, new Color(20, 16, 12, 60));
    }
}
