package afterlength.workshop.handover;

import java.time.LocalDate;
import java.util.List;

/** What hands did on one day. */
record WorkDay(LocalDate day, List<Line> lines) {

    /**
     * One thing done.
     *
     * @param minutes hands-on, 0 when not counted
     */
    record Line(String what, String material, String remark, String hand, long minutes) {}

    long minutes() {
        return lines.stream().mapToLong(Line::minutes).sum();
    }
}
