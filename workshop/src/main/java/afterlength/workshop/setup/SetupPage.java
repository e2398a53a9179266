package afterlength.workshop.setup;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.TracedMark;
import afterlength.workshop.instrument.Visit;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The set-up bench.
 *
 * @param crowns lines on photographs of this visit that can be taken as a template
 * @param saved whether a set-up of this moment is kept, so that there is a sheet
 * @param justSaved whether it was saved a moment ago
 */
record SetupPage(
        Frame frame,
        Visit visit,
        SetupMoment moment,
        Typed typed,
        LiveBench live,
        List<TracedMark> crowns,
        boolean saved,
        boolean justSaved) {

    List<Choice> crownChoices() {
        return crowns.stream()
                .map(mark -> new Choice(Long.toString(mark.id()), mark.words()))
                .toList();
    }

    int stringCount() {
        return SetupForm.count(typed);
    }

    int[] stringNumbers() {
        return IntStream.range(0, stringCount()).toArray();
    }

    String address() {
        return "/visits/" + visit.id() + "/setup";
    }

    boolean mayHaveMore() {
        return stringCount() < SetupForm.MOST_STRINGS;
    }

    boolean mayHaveFewer() {
        return stringCount() > SetupForm.FEWEST_STRINGS;
    }

    SetupMoment otherMoment() {
        return moment == SetupMoment.AFTER ? SetupMoment.BEFORE : SetupMoment.AFTER;
    }

    List<StringColumn> columns() {
        return List.of(StringColumn.values());
    }

    List<String> stringProblems() {
        return IntStream.range(0, stringCount())
                .boxed()
                .flatMap(n -> columns().stream()
                        .flatMap(column -> typed.problem("strings/" + n + "/" + column.field()).stream()))
                .toList();
    }
}
