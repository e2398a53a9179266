package afterlength.workshop.handover;

import java.time.LocalDate;
import java.util.List;

/** A day of a story: what was done, and the pictures taken that day. */
record StoryDay(LocalDate day, List<Line> lines, List<StoryPicture> pictures) {
    /** One piece of work, without a hand: the names of people stay in the shop. */
    record Line(String what, String material, String remark) {}
}
