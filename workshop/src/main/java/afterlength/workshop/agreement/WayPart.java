package afterlength.workshop.agreement;

import afterlength.craft.access.Motion;
import afterlength.craft.access.Pose;
import afterlength.workshop.paper.SvgPen;
import java.util.ArrayList;
import java.util.List;

/** The way in as far as it is known; while it is looked for, the part asks again by itself. */
record WayPart(WaySearch search) {
    private List<Pose> poses() {
        return search.findAnswer().orElse(null) instanceof Motion motion
                ? AccessDrawing.poses(motion, search.look())
                : List.of();
    }

    String words() {
        if (search.isWorking()) {
            return "A way in is being looked for: " + Math.round(100 * search.share())
                    + " % of the headings were tried.";
        }
        return search.findAnswer()
                .map(AccessWords::motion)
                .orElse(
                        "The search broke off; nothing is known about a way in. Change the tracing a little and look again.");
    }

    boolean hasWay() {
        return !poses().isEmpty();
    }

    String steps() {
        return SvgPen.forScreen(AccessDrawing.steps(search.look(), poses()));
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
