package afterlength.start;

import afterlength.start.verbs.Verb;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Where the program begins: all wiring is visible here. */
public final class Main {
    /** Held, because a logger nobody holds forgets its level. */
    private static final Logger EVERYTHING = Logger.getLogger("");

    private Main() {}

    public static void main(String[] arguments) {
        EVERYTHING.setLevel(Level.WARNING);
        Console console = new Console(System.in, System.out, System.err);
        CommandLine commandLine = new CommandLine(
                Verb.all(), Map.of("demo", new DemoCommand(), "plan", new PlanCommand()), new OpenShop());
        System.exit(commandLine.run(List.of(arguments), console));
    }
}
