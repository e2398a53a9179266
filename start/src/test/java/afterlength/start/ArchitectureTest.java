package afterlength.start;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The arrows between packages. The table here is the law; docs/architecture.md shows the same table to people. */
class ArchitectureTest {
    private static final String ROOT = "afterlength.";
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(place -> !place.contains("-tests.jar"))
            .importPackages("afterlength");

    /** A package and everything of ours it may name. Whoever is not on the list may not be named. */
    private static final Map<String, Set<String>> ARROWS = arrows();

    private static Map<String, Set<String>> arrows() {
        Map<String, Set<String>> table = new TreeMap<>();
        table.put("craft.units", Set.of());
        table.put("craft.estimate", Set.of());
        table.put("craft.geometry", Set.of("craft.units"));
        table.put("craft.setup", Set.of("craft.units", "craft.geometry"));
        table.put("craft.access", Set.of("craft.units", "craft.geometry"));
        table.put("craft.wood", Set.of("craft.units"));
        table.put("planner.bench", Set.of());
        table.put("planner.project", Set.of());
        table.put("planner.check", Set.of("planner.bench"));
        table.put("planner.engine", Set.of("planner.bench", "planner.project"));
        table.put("planner.reason", Set.of("planner.bench", "planner.check"));
        table.put("craft.air", Set.of("craft.units", "craft.wood"));
        table.put("craft.glue", Set.of("craft.units", "craft.wood"));
        table.put("craft.varnish", Set.of("craft.units"));
        table.put("craft.colour", Set.of("craft.geometry", "craft.units"));
        table.put("sight.picture", Set.of());
        table.put("sight.card", Set.of("craft"));
        table.put("sight.camera", Set.of("craft"));
        table.put("sight.find", Set.of("craft", "sight.camera", "sight.card"));
        table.put("sight.measure", Set.of("craft", "sight.camera", "sight.card", "sight.find", "sight.picture"));
        Set<String> rooms = Set.of("workshop.ledger", "workshop.paper", "workshop.desk");
        table.put("sight.colour", Set.of("craft", "sight.camera", "sight.card", "sight.measure"));
        table.put("workshop.ledger", Set.of("craft"));
        table.put("workshop.paper", Set.of("craft"));
        table.put("workshop.desk", Set.of("craft", "workshop.ledger"));
        List<String> stages = List.of("instrument", "examination", "agreement", "work", "setup", "retouch", "handover");
        Set<String> before = new TreeSet<>(rooms);
        before.add("craft");
        before.add("sight");
        for (String stage : stages) {
            table.put("workshop." + stage, Set.copyOf(before));
            before.add("workshop." + stage);
        }
        table.put("workshop.climate", Set.of("craft", "workshop.ledger", "workshop.paper", "workshop.desk"));
        table.put(
                "workshop.glue",
                Set.of(
                        "craft",
                        "workshop.ledger",
                        "workshop.paper",
                        "workshop.desk",
                        "workshop.climate",
                        "workshop.instrument",
                        "workshop.work"));
        table.put(
                "workshop.privacy",
                Set.of(
                        "craft",
                        "sight",
                        "workshop.ledger",
                        "workshop.paper",
                        "workshop.desk",
                        "workshop.instrument",
                        "workshop.examination"));
        table.put(
                "workshop.archive",
                Set.of(
                        "craft",
                        "sight",
                        "workshop.ledger",
                        "workshop.paper",
                        "workshop.desk",
                        "workshop.instrument",
                        "workshop.examination",
                        "workshop.agreement",
                        "workshop.work",
                        "workshop.handover",
                        "workshop.privacy"));
        table.put("workshop.backup", Set.of("craft", "workshop.desk", "workshop.ledger"));
        table.put("workshop.tablet", Set.of("craft", "sight", "workshop.desk", "workshop.ledger"));
        table.put(
                "workshop.closing",
                Set.of("workshop.ledger", "workshop.desk", "workshop.instrument", "workshop.agreement"));
        table.put(
                "workshop.advice",
                Set.of(
                        "craft",
                        "workshop.ledger",
                        "workshop.desk",
                        "workshop.instrument",
                        "workshop.examination",
                        "workshop.agreement"));
        table.put(
                "workshop.invoice",
                Set.of(
                        "craft",
                        "workshop.ledger",
                        "workshop.paper",
                        "workshop.desk",
                        "workshop.instrument",
                        "workshop.agreement",
                        "workshop.work"));
        table.put(
                "workshop.plan",
                Set.of(
                        "craft",
                        "planner",
                        "workshop.ledger",
                        "workshop.paper",
                        "workshop.desk",
                        "workshop.agreement",
                        "workshop.instrument",
                        "workshop.work"));
        table.put("start.demo", Set.of("craft", "sight", "workshop"));
        table.put("start.document", Set.of("craft"));
        table.put("start.verbs", Set.of("craft", "planner", "sight", "start.document", "workshop"));
        table.put(
                "start",
                Set.of("craft", "planner", "sight", "workshop", "start.demo", "start.document", "start.verbs"));
        return table;
    }

    @Test
    void arrowsPointOnlyWhereTheTableAllows() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass each : ALL) {
            String from = roomOf(each);
            assertThat(ARROWS)
                    .as("package of " + each.getName() + " stands in the table")
                    .containsKey(from);
            each.getDirectDependenciesFromSelf().stream()
                    .map(Dependency::getTargetClass)
                    .map(JavaClass::getBaseComponentType)
                    .filter(target -> target.getName().startsWith(ROOT))
                    .filter(target -> !allowed(from, roomOf(target)))
                    .forEach(target -> wrong.add(
                            from + " → " + roomOf(target) + ": " + each.getName() + " names " + target.getName()));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("afterlength.(**)").should().beFreeOfCycles().check(ALL);
    }

    @Test
    void craftNamesNobodyButItsTwoLibraries() {
        List<String> known =
                List.of("afterlength.craft", "java.", "org.locationtech.jts", "org.hipparchus", "org.jspecify");
        Set<String> foreign = ALL.stream()
                .filter(each -> each.getPackageName().startsWith("afterlength.craft"))
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .filter(target -> !target.isPrimitive())
                .map(JavaClass::getName)
                .filter(name -> known.stream().noneMatch(name::startsWith))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(foreign).isEmpty();
    }

    @Test
    void craftAsksNeitherClockNorFile() {
        List<String> impure =
                List.of("java.io.", "java.nio.file", "java.sql", "java.net", "java.time.Clock", "java.util.Random");
        Set<String> asked = ALL.stream()
                .filter(each -> each.getPackageName().startsWith("afterlength.craft"))
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .filter(dependency -> impure.stream()
                        .anyMatch(name -> dependency.getTargetClass().getName().startsWith(name)))
                .map(Dependency::getDescription)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(asked).isEmpty();
    }

    @Test
    void noPackageHasANameThatSaysNothing() {
        assertThat(ALL.stream().map(JavaClass::getPackageName).distinct())
                .noneMatch(name -> name.matches(".*\\b(util|utils|common|helper|helpers|manager|impl)\\b.*"));
    }

    @Test
    void theBookShowsTheSameTable() throws IOException {
        String book = Files.readString(Path.of("..", "docs", "architecture.md"));
        ARROWS.forEach((from, to) -> assertThat(book).contains("| `" + from + "` | " + shown(to) + " |"));
    }

    private static String shown(Set<String> allowed) {
        return allowed.isEmpty()
                ? "nobody"
                : new TreeSet<>(allowed).stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
    }

    private static boolean allowed(String from, String to) {
        return from.equals(to)
                || ARROWS.getOrDefault(from, Set.of()).stream()
                        .anyMatch(name -> to.equals(name) || to.startsWith(name + "."));
    }

    private static String roomOf(JavaClass each) {
        return each.getPackageName().substring(ROOT.length());
    }
}
