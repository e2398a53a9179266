package afterlength.start.demo;

import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatShape;
import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import afterlength.workshop.agreement.AccessChoice;
import afterlength.workshop.agreement.AccessStudy;
import afterlength.workshop.agreement.Inside;
import afterlength.workshop.agreement.ShopClamp;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** How the viola's crack at the lower eye is reached: two cleats on the jaw of a long clamp, in a body 52 mm deep there. */
final class ViolaAccess {
    private static final double CRACK_MM = 31;
    private static final double EYE_ASIDE_MM = 1.4;
    private static final double EYE_EDGE_MM = 4.7;

    private ViolaAccess() {}

    static void keep(DemoStores stores, long findingId, String hand) {
        long reaching = stores.clamps().add(new ShopClamp(0, "Long hook", 60, 10, 8, 2.2, 2.5, 3.5, false));
        stores.clamps().add(new ShopClamp(0, "Short hook", 38, 10, 8, 2.2, 2.2, 3, false));
        InstrumentShape viola = InstrumentShape.viola();
        Point eye = SoundHole.lowerEye(viola);
        List<Point> hole = SoundHole.treble(viola).outline(1.5).points();
        List<Point> crack =
                List.of(eye.plus(EYE_ASIDE_MM, EYE_EDGE_MM), eye.plus(EYE_ASIDE_MM + 0.4, EYE_EDGE_MM + CRACK_MM));
        stores.access()
                .add(new AccessStudy(
                        0,
                        findingId,
                        null,
                        AccessStudy.written(hole),
                        AccessStudy.written(crack),
                        2.7,
                        52,
                        8,
                        8,
                        1.2,
                        CleatShape.SQUARE,
                        CleatGrain.DIAGONAL,
                        25,
                        6,
                        reaching,
                        false,
                        false,
                        0,
                        true,
                        true,
                        AccessChoice.CLEATS,
                        hand,
                        stores.clock().instant().truncatedTo(ChronoUnit.SECONDS),
                        Inside.UNTOLD));
    }
}
