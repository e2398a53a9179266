package afterlength.workshop.agreement;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.FlatSheet;
import afterlength.workshop.examination.MarkTool;
import afterlength.workshop.examination.TracedMark;
import afterlength.workshop.paper.SvgPen;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How a crack is reached: what was traced and seen, and what follows.
 *
 * @param traced marks of the visit's photographs that can be taken over
 * @param stillTracing whether a card is still looked for in one of them
 * @param sheet of the photograph on which hole and crack were traced, or null
 */
record AccessPage(
        Frame frame,
        String address,
        String finding,
        Typed typed,
        List<ShopClamp> clamps,
        boolean hasStudy,
        boolean justKept,
        @Nullable AccessLook look,
        @Nullable WayPart way,
        List<TracedMark> traced,
        boolean stillTracing,
        @Nullable FlatSheet sheet) {
    List<Choice> clampChoices() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                "", "none: the cleat is lowered on a wire and pressed when the glue chills (Petherick, 1903)"));
        clamps.forEach(clamp ->
                choices.add(new Choice(Long.toString(clamp.id()), clamp.name() + ", " + ClampsPage.words(clamp))));
        return choices;
    }

    String photographs() {
        return address.replaceFirst("/access/.*", "/photographs");
    }

    String plan() {
        return look == null ? "" : SvgPen.forScreen(AccessDrawing.plan(look));
    }

    /** The drawing over the photograph, when hole and crack were traced on one. */
    @Nullable
    OnPhotograph onPhotograph() {
        return look == null || sheet == null ? null : new OnPhotograph(sheet, look);
    }

    List<Choice> outlines() {
        return choices(TracedMark::isOutline);
    }

    List<Choice> lines() {
        return choices(TracedMark::isLine);
    }

    List<Choice> points() {
        return choices(mark -> mark.tool() == MarkTool.POINT);
    }

    private List<Choice> choices(Predicate<TracedMark> which) {
        return traced.stream()
                .filter(which)
                .map(mark -> new Choice(Long.toString(mark.id()), mark.words()))
                .toList();
    }
}
