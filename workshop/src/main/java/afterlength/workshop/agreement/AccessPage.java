package afterlength.workshop.agreement;

import afterlength.craft.access.Motion;
import afterlength.craft.access.Pose;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.paper.SvgPen;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How a crack is reached: what was traced and seen, and what follows. */
record AccessPage(
        Frame frame,
        String address,
        String finding,
        Typed typed,
        List<ShopClamp> clamps,
        boolean hasStudy,
        boolean justKept,
        @Nullable AccessLook look) {
    List<Choice> clampChoices() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                "", "none: the cleat is lowered on a wire and pressed when the glue chills (Petherick, 1903)"));
        clamps.forEach(clamp ->
                choices.add(new Choice(Long.toString(clamp.id()), clamp.name() + ", " + ClampsPage.words(clamp))));
        return choices;
    }

    String plan() {
        return look == null ? "" : SvgPen.forScreen(AccessDrawing.plan(look));
    }

    private List<Pose> poses() {
        return look != null && look.motion() instanceof Motion motion ? AccessDrawing.poses(motion, look) : List.of();
    }

    boolean hasWay() {
        return !poses().isEmpty();
    }

    String steps() {
        return look == null ? "" : SvgPen.forScreen(AccessDrawing.steps(look, poses()));
    }

    List<String> moves() {
        List<Pose> poses = poses();
        List<String> moves = new ArrayList<>();
        for (int i = 1; i < poses.size(); i++) {
            moves.add(AccessWords.step(poses.get(i - 1), poses.get(i)));
        }
        return moves;
    }
}
