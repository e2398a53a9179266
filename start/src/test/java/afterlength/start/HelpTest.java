package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpTest {
    static List<String> verbs() {
        return Verb.all().stream().map(Verb::name).toList();
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void theExampleInTheHelpWorksWhenPastedBack(String verb) {
        Typed help = Typed.with("", verb, "--help");
        assertThat(help.exit()).isZero();
        String pasted = help.out().substring(help.out().indexOf('{'), help.out().lastIndexOf('}') + 1);
        Typed answer = Typed.with(pasted, verb);
        assertThat(answer.json().path("problems").size()).as(answer.out()).isZero();
        assertThat(answer.exit()).isZero();
        assertThat(answer.json().isObject()).isTrue();
    }

    /** The same question has the same answer, byte for byte. */
    @ParameterizedTest
    @MethodSource("verbs")
    void theAnswerIsStable(String verb) {
        Verb known = Verb.all().stream()
                .filter(one -> one.name().equals(verb))
                .findFirst()
                .orElseThrow();
        assertThat(Typed.with(known.example(), verb)).isEqualTo(Typed.with(known.example(), verb));
    }
}
