package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.paper.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The buttons of the page that change the form itself: a string more or fewer, and the crown as it is drawn as a template to drag. */
final class SetupTake {
    /** Enough to give a crown any sensible form, few enough to drag one by one. */
    private static final int POINTS = 9;

    private SetupTake() {}

    static Typed from(Typed typed) {
        Map<String, String> form = typed.everything();
        switch (form.getOrDefault("take", "")) {
            case "more" -> count(form, SetupForm.count(typed) + 1);
            case "fewer" -> count(form, SetupForm.count(typed) - 1);
            case "points" -> points(form);
            default -> {}
        }
        form.remove("take");
        return Typed.known(form);
    }

    private static void count(Map<String, String> form, int count) {
        form.put("string_count", Integer.toString(count));
    }

    private static void points(Map<String, String> form) {
        Typed copy = Typed.known(form);
        BridgeAnswer answer = SetupForm.solve(copy, SetupForm.read(copy).inputs());
        if (copy.sound() && answer instanceof BridgeShape shape) {
            form.put(SetupForm.TEMPLATE, TemplateText.written(crown(shape)));
            form.put("crown", CrownKind.TEMPLATE.name());
        }
    }

    /** Over the board line, carried on a little beyond the outer strings, for a template hangs over at both ends. */
    private static List<CrossPoint> crown(BridgeShape shape) {
        BridgeOutline outline = new BridgeOutline(shape);
        double bass_mm = shape.strings().get(0).bridgeY().mm();
        double treble_mm =
                shape.strings().get(shape.strings().size() - 1).bridgeY().mm();
        List<CrossPoint> points = new ArrayList<>();
        points.add(overBoardLine(outline, outline.bassEnd()));
        for (int i = 0; i < POINTS - 2; i++) {
            double y_mm = bass_mm + (treble_mm - bass_mm) * i / (POINTS - 3);
            points.add(new CrossPoint(y_mm, shape.crown().height_mm(y_mm)));
        }
        points.add(overBoardLine(outline, outline.trebleEnd()));
        return points;
    }

    private static CrossPoint overBoardLine(BridgeOutline outline, Point point) {
        return new CrossPoint(point.x_mm(), point.y_mm() - outline.projection_mm());
    }
}
