package afterlength.workshop.retouch;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.paper.SvgPen;
import java.util.List;

/** One mended line: what both photographs say. */
record MendedLinePage(Frame frame, MendedLine line, LineView before, LineView after) {
    String address() {
        return "/visits/" + line.visitId() + "/mended-lines/" + line.id();
    }

    List<LineView> views() {
        return List.of(before, after);
    }

    String drawing() {
        return SvgPen.forScreen(AcrossDrawing.of(line));
    }
}
