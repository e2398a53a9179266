package afterlength.workshop.setup;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import java.util.stream.IntStream;

/**
 * The set-up bench.
 *
 * @param saved whether a set-up of this moment is kept, so that there is a sheet
 * @param justSaved whether it was saved a moment ago
 */
record SetupPage(
        Frame frame, Visit visit, SetupMoment moment, Typed typed, LivePart live, boolean saved, boolean justSaved) {

    int stringCount() {
        return SetupForm.count(typed);
    }

    int[] stringNumbers() {
        return IntStream.range(0, stringCount()).toArray();
    }

    String address() {
        return "/visits/" + visit.id() + "/setup";
    }

    String addressWith(int strings) {
        return address() + "?moment=" + moment + "&strings=" + strings;
    }

    boolean mayHaveMore() {
        return stringCount() < SetupForm.MOST_STRINGS;
    }

    boolean mayHaveFewer() {
        return stringCount() > SetupForm.FEWEST_STRINGS;
    }
}
