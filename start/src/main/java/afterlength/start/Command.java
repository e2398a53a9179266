package afterlength.start;

import java.util.List;

/** Something to start that is not a question with a document, such as the shop itself. */
public interface Command {
    /** What it does, in one line for the help. */
    String summary();

    /** Does it, and returns the exit code. */
    int run(List<String> arguments, Console console);
}
