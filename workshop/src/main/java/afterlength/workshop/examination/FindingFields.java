package afterlength.workshop.examination;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Typed;
import java.util.Arrays;
import java.util.List;

/** What the form for a finding shows: what was typed, and what is offered. */
record FindingFields(Typed typed, List<Photograph> photographs, List<String> hands) {
    static final List<Choice> AGES = Arrays.stream(FindingAge.values())
            .map(age -> new Choice(age.name(), age.words()))
            .toList();
    static final List<Choice> ANSWERS = Arrays.stream(Answer.values())
            .map(answer -> new Choice(answer.name(), answer.words()))
            .toList();
}
