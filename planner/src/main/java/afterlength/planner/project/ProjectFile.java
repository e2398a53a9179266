package afterlength.planner.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import java.util.regex.Pattern;

/**
 * Reads the two text forms of the open benchmarks: {@code .sm} of PSPLIB (docs/sources.md#kolisch-sprecher-1996) and {@code .sch} of
 * ProGen/max (docs/sources.md#schwindt-1998).
 */
public final class ProjectFile {
    private static final Pattern NUMBERS_ONLY = Pattern.compile("[\\s\\d]*\\d[\\s\\d]*");

    /** No published instance is larger; a file that says so is broken. */
    private static final int MOST = 2000;

    private ProjectFile() {}

    /** The project in a text.
     *
     * @throws IllegalArgumentException with a sentence that says what is wrong
     */
    public static Project read(String text) {
        try {
            return text.contains("PRECEDENCE RELATIONS") ? withHeadings(text) : withLags(text);
        } catch (java.util.NoSuchElementException | IndexOutOfBoundsException | NumberFormatException broken) {
            throw new IllegalArgumentException(
                    "The file is no project of the kind .sm or .sch: a number is missing or out of place. Give a file as published.",
                    broken);
        }
    }

    private static Project withHeadings(String text) {
        List<List<Integer>> followers = rows(text, "PRECEDENCE RELATIONS:");
        List<List<Integer>> requests = rows(text, "REQUESTS/DURATIONS:");
        List<Integer> capacities = rows(text, "RESOURCEAVAILABILITIES:").get(0);
        List<Integer> durations = requests.stream().map(row -> row.get(2)).toList();
        List<List<Integer>> demands =
                requests.stream().map(row -> row.subList(3, row.size())).toList();
        List<Project.Distance> distances = new ArrayList<>();
        for (int from = 0; from < followers.size(); from++) {
            for (int to : followers.get(from).subList(3, followers.get(from).size())) {
                distances.add(new Project.Distance(from, to - 1, durations.get(from)));
            }
        }
        return checked(new Project(durations, demands, capacities, distances));
    }

    /** The lines of numbers under a heading, up to the next line of stars. */
    private static List<List<Integer>> rows(String text, String heading) {
        int at = text.indexOf(heading) + heading.length();
        String part = text.substring(at).split("\\*{4}", 2)[0];
        return part.lines()
                .filter(line -> NUMBERS_ONLY.matcher(line).matches())
                .map(ProjectFile::numbers)
                .toList();
    }

    private static List<Integer> numbers(String line) {
        return List.of(line.strip().split("\\s+")).stream()
                .map(Integer::valueOf)
                .toList();
    }

    private static Project withLags(String text) {
        try (Scanner words = new Scanner(text.replace('[', ' ').replace(']', ' '))) {
            int size = words.nextInt() + 2;
            int resources = words.nextInt();
            if (size < 2 || size > MOST || resources < 0 || resources > MOST) {
                throw new NumberFormatException();
            }
            words.nextLine();
            List<Project.Distance> distances = new ArrayList<>();
            for (int activity = 0; activity < size; activity++) {
                lags(words, distances);
            }
            List<Integer> durations = new ArrayList<>();
            List<List<Integer>> demands = new ArrayList<>();
            for (int activity = 0; activity < size; activity++) {
                words.nextInt();
                words.nextInt();
                durations.add(words.nextInt());
                demands.add(next(words, resources));
            }
            return checked(new Project(durations, demands, next(words, resources), distances));
        }
    }

    private static void lags(Scanner words, List<Project.Distance> distances) {
        int from = words.nextInt();
        words.nextInt();
        int count = words.nextInt();
        List<Integer> to = next(words, count);
        List<Integer> lag = next(words, count);
        for (int k = 0; k < count; k++) {
            distances.add(new Project.Distance(from, to.get(k), lag.get(k)));
        }
    }

    private static List<Integer> next(Scanner words, int count) {
        List<Integer> numbers = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            numbers.add(words.nextInt());
        }
        return numbers;
    }

    private static Project checked(Project project) {
        int size = project.size();
        boolean sound = size >= 2
                && size <= MOST
                && project.durations().stream().allMatch(duration -> duration >= 0 && duration < 100_000)
                && project.demands().size() == size
                && project.demands().stream()
                        .allMatch(
                                demand -> demand.size() == project.capacities().size())
                && project.distances().stream().allMatch(each -> isInside(each, size));
        if (!sound) {
            throw new NumberFormatException();
        }
        return project;
    }

    private static boolean isInside(Project.Distance each, int size) {
        return each.from() >= 0
                && each.from() < size
                && each.to() >= 0
                && each.to() < size
                && Math.abs(each.lag()) < 1_000_000;
    }
}
