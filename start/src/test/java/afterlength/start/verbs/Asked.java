package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A verb asked with a text, and its reply read by another reader than our own. */
final class Asked {
    private Asked() {}

    static JsonNode answer(Verb verb, String question) {
        JsonNode answer = reply(verb, question);
        assertThat(answer.has("problems")).as(answer.toString()).isFalse();
        return answer;
    }

    static List<String> places(Verb verb, String question) {
        return problems(verb, question, "at");
    }

    static List<String> messages(Verb verb, String question) {
        return problems(verb, question, "message");
    }

    private static List<String> problems(Verb verb, String question, String key) {
        JsonNode reply = reply(verb, question);
        assertThat(reply.propertyNames()).as(reply.toString()).containsExactly("problems");
        return reply.get("problems").values().stream()
                .map(problem -> problem.get(key).asString())
                .toList();
    }

    private static JsonNode reply(Verb verb, String question) {
        Reply reply = verb.answer(DocumentReader.of(question.getBytes(StandardCharsets.UTF_8)));
        return JsonMapper.shared().readTree(reply.json());
    }
}
