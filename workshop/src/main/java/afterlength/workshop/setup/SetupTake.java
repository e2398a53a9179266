package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.TracedMark;
import afterlength.workshop.paper.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The buttons of the page that change the form itself: a string more or fewer, the crown as it is drawn as a template to drag, and a
 * crown that was traced on a photograph.
 */
final class SetupTake {
    /** Enough to give a crown any sensible form, few enough to drag one by one. */
    private static final int POINTS = 9;

    /** What the button says, and the field with the mark it takes. */
    static final String TRACED = "traced";

    static final String TRACED_MARK = "traced_crown";

    private SetupTake() {}

    /** @param crowns marks of the visit's photographs that can be taken as a template */
    static Typed from(Typed typed, List<TracedMark> crowns) {
        Map<String, String> form = typed.everything();
        switch (form.getOrDefault("take", "")) {
            case "more" -> count(form, SetupForm.count(typed) + 1);
            case "fewer" -> count(form, SetupForm.count(typed) - 1);
            case "points" -> points(form);
            case TRACED -> {
                return traced(form, crowns);
            }
            default -> {}
        }
        form.remove("take");
        return Typed.known(form);
    }

    /** What was typed stays when nothing is chosen, or when the mark went meanwhile. */
    private static Typed traced(Map<String, String> form, List<TracedMark> crowns) {
        form.remove("take");
        String chosen = form.getOrDefault(TRACED_MARK, "");
        Optional<TracedMark> crown = crowns.stream()
                .filter(mark -> Long.toString(mark.id()).equals(chosen))
                .findFirst();
        crown.ifPresent(mark -> {
            form.put(SetupForm.TEMPLATE, mark.crown());
            form.put("crown", CrownKind.TEMPLATE.name());
        });
        Typed typed = Typed.known(form);
        if (crown.isEmpty()) {
            typed.note(
                    TRACED_MARK,
                    chosen.isEmpty()
                            ? "No traced line is chosen. Choose one."
                            : "The line that was chosen is not measured on a photograph of this visit any more. Choose another.");
        }
        return typed;
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
