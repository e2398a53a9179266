package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import java.time.LocalTime;

/** Part of a day without a break. */
public record Stretch(LocalTime from, LocalTime to) {
    public Stretch {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("the hours " + from + "-" + to + " end before they begin");
        }
    }

    String text() {
        return Days.clock(from) + "-" + Days.clock(to);
    }
}
