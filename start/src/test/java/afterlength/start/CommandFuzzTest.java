package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that take options rather than one document: whatever is typed and whatever the files hold, exit 0 or 2, in words. */
class CommandFuzzTest {
    /** More by hand: {@code -Dfuzz.cases=10000}. */
    private static final int CASES = Integer.getInteger("fuzz.cases", 300);

    private static final Map<String, List<String>> OPTIONS = options();

    @TempDir
    Path folder;

    private List<String> files = List.of();

    private static Map<String, List<String>> options() {
        Map<String, List<String>> options = new LinkedHashMap<>();
        options.put("card", List.of("--card", "--paper", "--number", "--to"));
        options.put("measure", List.of("--marks"));
        options.put("plan", List.of("--keep", "--seconds", "--check", "--rcpsp", "--stability"));
        options.put("backup", List.of("--to", "--shop"));
        options.put("restore", List.of("--from", "--shop", "--put-living-shop-aside"));
        options.put("moisture", List.of("--logger"));
        options.put("bridge", List.of("--pdf", "--svg", "--paper"));
        return options;
    }

    @BeforeEach
    void someFiles() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        byte[] noise = new byte[3000];
        random.nextBytes(noise);
        Path shop = Files.createDirectories(folder.resolve("no-shop"));
        Files.write(Files.createDirectories(folder.resolve("half")).resolve("backup.txt"), noise);
        Files.write(Files.createDirectories(folder.resolve("junk-shop")).resolve("shop.db"), noise);
        files = List.of(
                write("noise", noise),
                write("empty", new byte[0]),
                write("document.json", Verb.all().get(0).example().getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                write("picture.jpg", NoisyPicture.of(40, 40, random)),
                write(
                        "air.csv",
                        "time;temp;rh\n2026-01-01 00:00;20,5;45\n".getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                shop.toString(),
                folder.resolve("half").toString(),
                folder.resolve("junk-shop").toString(),
                folder.resolve("not-there/at-all").toString(),
                "\u0000",
                "");
    }

    private String write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }

    @Test
    void neverAFaultOfOurOwnAndNeverSilent() {
        Map<String, Command> commands = new LinkedHashMap<>();
        commands.put(MeasureCommand.NAME, new MeasureCommand());
        commands.put(CardCommand.NAME, new CardCommand());
        commands.put(PlanCommand.NAME, new PlanCommand());
        commands.put(BackupCommand.NAME, new BackupCommand(Typed.MARCH));
        commands.put(RestoreCommand.NAME, new RestoreCommand(Typed.MARCH));
        CommandLine line = new CommandLine(Verb.all(), commands, new OpenShop(), Typed.MARCH);
        OPTIONS.forEach((command, options) -> {
            for (long seed = 0; seed < CASES; seed++) {
                SplittableRandom random = new SplittableRandom(seed * 31 + command.hashCode());
                List<String> arguments = arguments(command, options, random);
                Typed typed = Typed.at(line, input(random), arguments.toArray(String[]::new));
                assertThat(typed.exit())
                        .as("seed " + seed + " " + arguments + "\n" + typed.err())
                        .isIn(0, 2);
                assertThat(typed.out() + typed.err())
                        .as("seed " + seed + " " + arguments)
                        .isNotBlank();
            }
        });
    }

    private static byte[] input(SplittableRandom random) {
        return FuzzTest.changed(
                Verb.all().get(random.nextInt(Verb.all().size())).example(), random);
    }

    private List<String> arguments(String command, List<String> options, SplittableRandom random) {
        List<String> arguments = new ArrayList<>(List.of(command));
        if (random.nextBoolean() && (command.equals("measure") || command.equals("plan"))) {
            arguments.add(files.get(random.nextInt(files.size())));
        }
        for (int n = random.nextInt(1, 6); n > 0; n--) {
            switch (random.nextInt(5)) {
                case 0 -> arguments.add(files.get(random.nextInt(files.size())));
                case 1 ->
                    arguments.add(List.of("-1", "0", "1", "a4", "body", "1e9", "--", "-", "∞")
                            .get(random.nextInt(9)));
                default -> {
                    arguments.add(options.get(random.nextInt(options.size())));
                    arguments.add(files.get(random.nextInt(files.size())));
                }
            }
        }
        if (!arguments.contains("--shop") && (command.equals("backup") || command.equals("restore"))) {
            arguments.addAll(List.of("--shop", folder.resolve("junk-shop").toString()));
        }
        return arguments;
    }
}
