package afterlength.start;

import afterlength.start.verbs.Verb;
import java.util.List;
import java.util.Map;

/** Where the program begins: all wiring is visible here. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        Console console = new Console(System.in, System.out, System.err);
        CommandLine commandLine = new CommandLine(Verb.all(), Map.of(), new NoShopYet());
        System.exit(commandLine.run(List.of(arguments), console));
    }
}
