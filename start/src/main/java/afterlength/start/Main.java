package afterlength.start;

import afterlength.start.verbs.Verb;
import java.time.Clock;
import java.time.ZoneId;
import java.util.LinkedHashMap;
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
        Map<String, Command> commands = new LinkedHashMap<>();
        commands.put(MeasureCommand.NAME, new MeasureCommand());
        commands.put(CardCommand.NAME, new CardCommand());
        commands.put(PlanCommand.NAME, new PlanCommand());
        commands.put(ArchiveCommand.NAME, new ArchiveCommand());
        commands.put(ReadArchiveCommand.NAME, new ReadArchiveCommand());
        Clock clock = Clock.system(ZoneId.systemDefault());
        commands.put(BackupCommand.NAME, new BackupCommand(clock));
        commands.put(RestoreCommand.NAME, new RestoreCommand(clock));
        commands.put("demo", new DemoCommand());
        CommandLine commandLine = new CommandLine(Verb.all(), commands, new OpenShop(), clock);
        System.exit(commandLine.run(List.of(arguments), console));
    }
}
