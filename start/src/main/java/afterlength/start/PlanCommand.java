package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.planner.engine.Effort;
import afterlength.planner.engine.Planner;
import afterlength.planner.engine.ProjectAnswer;
import afterlength.planner.engine.ProjectPlanner;
import afterlength.planner.project.Project;
import afterlength.planner.project.ProjectFile;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.PlanVerb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The verb {@code plan} with options: how long, from which plan on, judging a plan, planning a project of the open benchmarks. */
final class PlanCommand implements Command {
    static final String NAME = "plan";

    private static final double SECONDS = 2;
    private static final double MOST_SECONDS = 600;
    private static final double MOST_STABILITY = 1000;

    private final PlanVerb verb = new PlanVerb();

    @Override
    public String summary() {
        return "with options: FILE --seconds S, --keep PLAN --stability C; --check FILE PLAN; --rcpsp FILE";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        List<String> words = new ArrayList<>(arguments);
        boolean check = words.remove("--check");
        List<String> files = new ArrayList<>();
        while (!words.isEmpty() && !words.get(0).startsWith("--")) {
            files.add(words.remove(0));
        }
        Options options = Options.read(words, Set.of("--seconds", "--keep", "--stability", "--rcpsp"), Set.of());
        Reply reply = reply(check, files, options);
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private Reply reply(boolean check, List<String> files, Options options) {
        List<Problem> problems = new ArrayList<>(options.problems());
        double seconds = number(options, "--seconds", SECONDS, MOST_SECONDS, problems);
        double stability = number(options, "--stability", Planner.STABILITY, MOST_STABILITY, problems);
        boolean project = options.has("--rcpsp");
        int wanted = project ? 0 : check ? 2 : 1;
        if (files.size() != wanted) {
            problems.add(new Problem(
                    "",
                    String.join(" ", files),
                    "plan was given " + files.size() + " files and wants " + wanted
                            + ". Name them first, then the options. Type plan --help to see what there is."));
        }
        if (!problems.isEmpty()) {
            return new Reply.Refused(problems);
        }
        if (project) {
            return project(options.find("--rcpsp").orElseThrow(), seconds);
        }
        return withFiles(check, files, options.find("--keep"), seconds, stability);
    }

    private Reply withFiles(
            boolean check, List<String> files, Optional<String> keep, double seconds, double stability) {
        List<Problem> problems = new ArrayList<>();
        Optional<DocumentReader> workshop = open(files.get(0), problems);
        Optional<DocumentReader> plan =
                (check ? Optional.of(files.get(1)) : keep).flatMap(name -> open(name, problems));
        if (!problems.isEmpty() || workshop.isEmpty()) {
            return new Reply.Refused(problems);
        }
        return check
                ? verb.check(workshop.get(), plan.orElseThrow())
                : verb.answer(workshop.get(), Optional.of(seconds), plan, stability);
    }

    private static Optional<DocumentReader> open(String name, List<Problem> problems) {
        Question question = Question.from(name);
        if (question instanceof Question.Opened opened) {
            return Optional.of(opened.document());
        }
        problems.add(((Question.Unreadable) question).problem());
        return Optional.empty();
    }

    private static Reply project(String file, double seconds) {
        try {
            Project project = ProjectFile.read(Files.readString(Path.of(file)));
            return answered(ProjectPlanner.plan(project, Effort.ofSeconds(seconds)));
        } catch (IOException | InvalidPathException unreadable) {
            return refused(file, "The file \"" + file + "\" cannot be read. Name a file that can be opened and read.");
        } catch (IllegalArgumentException broken) {
            return refused(file, String.valueOf(broken.getMessage()));
        }
    }

    private static Reply answered(ProjectAnswer answer) {
        AnswerDocument document = new AnswerDocument();
        if (answer instanceof ProjectAnswer.Made made) {
            document.put("makespan", made.makespan())
                    .putWhole("start", made.starts())
                    .put("bound", made.bound());
        } else if (answer instanceof ProjectAnswer.Impossible impossible) {
            document.put("infeasible", "proven: " + impossible.why());
        } else {
            document.put("notFound", "no plan was found in the time given; that proves nothing");
        }
        return new Reply.Answered(document);
    }

    private static Reply refused(String value, String message) {
        return new Reply.Refused(List.of(new Problem("", value, message)));
    }

    private static double number(Options options, String option, double usual, double most, List<Problem> problems) {
        String text = options.find(option).orElse(Double.toString(usual));
        if (text.matches("\\d{1,4}(\\.\\d{1,6})?") && Double.parseDouble(text) <= most) {
            return Double.parseDouble(text);
        }
        problems.add(new Problem(
                "",
                text,
                "The option " + option + " is \"" + text + "\"; give a number from 0 to " + Math.round(most) + "."));
        return usual;
    }
}
