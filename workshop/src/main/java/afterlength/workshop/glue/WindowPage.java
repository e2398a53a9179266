package afterlength.workshop.glue;

import afterlength.craft.glue.WorkingWindow;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The working window: what was asked, and the answer drawn when everything is there. */
record WindowPage(
        Frame frame, Typed typed, WorkingWindow.@Nullable Known window, String drawing, List<WindowLine> warmed) {}
