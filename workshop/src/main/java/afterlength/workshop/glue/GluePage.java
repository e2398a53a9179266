package afterlength.workshop.glue;

import afterlength.workshop.desk.Frame;
import java.time.Instant;
import java.util.List;

/** The glue pot: what stands in the water bath, and what stood in it. */
record GluePage(Frame frame, List<Pot> open, List<Pot> ended, Instant now) {
    String answer() {
        return open.isEmpty()
                ? "No glue is made up. Soaking ground glue takes one to four hours, flakes a night: begin in time."
                : PotWords.answer(open.get(0), now);
    }
}
