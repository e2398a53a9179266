package afterlength.start.demo;

import afterlength.craft.geometry.BridgeFront;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.FittingShape;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Tailpiece;
import java.awt.geom.Path2D;
import java.util.List;

/** Bridge, board and tailpiece of one instrument as the camera at its lower end sees them. Paint goes on in pixels. */
final class Setting {
    private static final double OLD_HEIGHT_MM = 31;
    private static final double BASS_HIGHER_MM = 2;
    private static final double STRING_SPAN_TILT = 0.045;

    private final DemoInstrument instrument;
    private final Camera camera;
    private final Canvas canvas;

    Setting(DemoInstrument instrument) {
        this.instrument = instrument;
        this.camera = new Camera(stop_mm() + 270, 138, stop_mm(), 14, 15.0, 800, 560);
        this.canvas = new Canvas(new Frame(DemoView.CLOSE.width(), DemoView.CLOSE.height(), 800, 600, 1, 0));
    }

    DemoInstrument instrument() {
        return instrument;
    }

    Canvas canvas() {
        return canvas;
    }

    Camera camera() {
        return camera;
    }

    FittingShape fittings() {
        return instrument.shape().fittings();
    }

    double stop_mm() {
        return instrument.shape().body().stop_mm();
    }

    double fret_mm() {
        return Tailpiece.fret_mm(instrument.shape());
    }

    /** The old bridge is lower than its feet and the board ask for. */
    double bridgeHeight_mm() {
        return instrument.isSetUpAnew() ? fittings().bridgeHeight_mm() : OLD_HEIGHT_MM;
    }

    BridgeFront bridge() {
        return BridgeFront.of(fittings().bridgeWidth_mm(), bridgeHeight_mm(), BASS_HIGHER_MM);
    }

    /** Height of the bridge's top over the belly at a distance from the centre line. */
    double crown_mm(double x_mm) {
        double radius_mm = 42 * fittings().bridgeWidth_mm() / 41;
        double sag_mm = radius_mm - Math.sqrt(radius_mm * radius_mm - x_mm * x_mm);
        return bridgeHeight_mm() - sag_mm - x_mm * STRING_SPAN_TILT;
    }

    /** Height of the tailpiece over the belly: falls from its head to the saddle. */
    double tailpiece_mm(double y_mm) {
        return bridgeHeight_mm() * 0.52 - 0.11 * (y_mm - fret_mm());
    }

    /** What lies flat at a height over the belly. */
    Path2D lying(List<Point> places, double z_mm) {
        return Shapes.area(places.stream()
                .map(place -> camera.seen(place.x_mm(), place.y_mm(), z_mm))
                .toList());
    }

    /** A flat drawing set upright across the instrument at a level. */
    Path2D standing(Curve drawing, double y_mm) {
        return Shapes.area(drawing.points(0.15).stream()
                .map(point -> camera.seen(point.x_mm(), y_mm, -point.y_mm()))
                .toList());
    }
}
