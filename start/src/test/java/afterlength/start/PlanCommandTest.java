package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.PlanVerb;
import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb {@code plan} with its options. */
class PlanCommandTest {
    private static final CommandLine COMMAND_LINE =
            new CommandLine(Verb.all(), Map.of("plan", new PlanCommand()), new OpenShop(), Clock.systemUTC());

    @TempDir
    Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static Typed type(String... arguments) {
        return Typed.at(COMMAND_LINE, new byte[0], arguments);
    }

    @Test
    void thePlanItMakesPassesItsOwnCheck() throws IOException {
        String shop = file("shop.json", new PlanVerb().example());
        Typed made = type("plan", shop, "--seconds", "0.1");
        assertThat(made.exit()).isZero();
        Typed checked = type("plan", "--check", shop, file("plan.json", made.out()));
        assertThat(checked.out()).isEqualTo(made.out());
        Typed kept = type(
                "plan",
                shop,
                "--seconds",
                "0.1",
                "--keep",
                folder.resolve("plan.json").toString());
        assertThat(kept.json().get("plan")).isEqualTo(made.json().get("plan"));
    }

    @Test
    void aPlanThatBreaksRulesIsToldWhich() throws IOException {
        String shop = file("shop.json", new PlanVerb().example());
        Typed checked = type("plan", "--check", shop, file("plan.json", "{\"plan\": [[540, 0], [600, 0]]}"));
        assertThat(checked.exit()).isEqualTo(2);
        assertThat(checked.problems())
                .containsExactly(
                        "/plan/0: Broken: hot glue is used inside one half-day, after warming up: glue the seam.",
                        "/plan/1: Broken: a step begins when those before it have ended, their wait included: string up and glue the seam."
                                + " Broken: only one step at a time holds the instrument: string up and glue the seam.");
    }

    @Test
    void aStepLongerThanAnyDayIsRefused() throws IOException {
        String shop = file("shop.json", new PlanVerb().example().replace("\"hands\": 40", "\"hands\": 400"));
        assertThat(type("plan", shop, "--seconds", "0.1").problems())
                .containsExactly(
                        "/steps: The work does not fit: a step is longer than any stretch of hours of its person, or wants more clamps"
                                + " or places than there are, or the hours end too soon. Give longer hours, more days or shorter steps.");
    }

    @Test
    void aProjectWithoutAnyPlanIsReported() throws IOException {
        String project = """
                2 1 0 0
                0 1 2 1 2 [0] [0]
                1 1 2 2 3 [-4] [5]
                2 1 2 1 3 [-4] [5]
                3 1 0
                0 1 0 0
                1 1 5 2
                2 1 5 2
                3 1 0 0
                3
                """;
        Typed answer = type("plan", "--rcpsp", file("two.sch", project), "--seconds", "0.1");
        assertThat(answer.exit()).isZero();
        assertThat(answer.json().get("infeasible").asString())
                .isEqualTo(
                        "proven: whatever the order of the activities that cannot go on at once, a longest distance is broken");
        Typed possible = type("plan", "--rcpsp", file("room.sch", project.replace("[-4]", "[-5]")), "--seconds", "0.1");
        assertThat(possible.json().get("makespan").asInt()).isEqualTo(10);
    }

    @Test
    void wrongOptionsAreAllToldAtOnce() {
        assertThat(type("plan", "--seconds", "soon", "--fast").problems())
                .containsExactly(
                        ": There is no option \"--fast\". Type --help to see what there is.",
                        ": The option --seconds is \"soon\"; give a number from 0 to 600.",
                        ": plan was given 0 files and wants 1. Name them first, then the options. Type plan --help to see what there is.");
    }
}
