package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a verb says to a document: an answer, or everything that was wrong with the question. */
public sealed interface Reply {
    /** The reply as one JSON document. */
    String json();

    record Answered(AnswerDocument document) implements Reply {
        @Override
        public String json() {
            return JsonText.write(document.fields());
        }
    }

    record Refused(List<Problem> problems) implements Reply {
        public Refused {
            problems = List.copyOf(problems);
        }

        @Override
        public String json() {
            return JsonText.write(
                    Map.of("problems", problems.stream().map(Refused::fields).toList()));
        }

        private static Map<String, @Nullable Object> fields(Problem problem) {
            Map<String, @Nullable Object> fields = new LinkedHashMap<>();
            fields.put("at", problem.at());
            fields.put("value", Given.inProblem(problem.value()));
            fields.put("message", problem.message());
            return fields;
        }
    }
}
