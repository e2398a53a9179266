package afterlength.workshop.work;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/**
 * A diary entry being written or corrected.
 *
 * @param about the step it is about, empty for a note on the visit
 */
record DiaryPage(
        Frame frame,
        String address,
        DiaryEvent what,
        String about,
        boolean correction,
        List<Material> shelf,
        List<Choice> hands,
        Typed typed) {

    boolean hasMinutes() {
        return what == DiaryEvent.DONE || what == DiaryEvent.NOTE;
    }

    boolean hasMaterial() {
        return what == DiaryEvent.DONE || what == DiaryEvent.NOTE;
    }
}
