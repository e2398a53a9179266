package afterlength.planner;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import afterlength.planner.project.Project;
import afterlength.planner.project.ProjectFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads what lies in the test resources; where it comes from is told in the README there. */
public final class Instances {
    public static final List<String> TINY = List.of(
            "tiny_w2p1s1",
            "tiny_w2p1s2",
            "tiny_w2p1s3",
            "tiny_w3p1s1",
            "tiny_w3p1s2",
            "tiny_w3p1s3",
            "tiny_w3p1s4",
            "tiny_w3p2s1",
            "tiny_w3p2s2");

    public static final List<String> BENCH =
            List.of("bench_w10p1s1", "bench_w10p1s2", "bench_w20p1s2", "bench_w20p2s3", "bench_w40p2s1");

    private Instances() {}

    /** A project of the open benchmarks with what is known of its makespan. */
    public record Known(String set, String file, int lower, int upper) {
        public Project project() {
            return ProjectFile.read(text("open/" + set + "/" + file));
        }
    }

    public static List<Known> listKnown() {
        return text("open/best_known.csv")
                .lines()
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(part -> new Known(part[0], part[1], Integer.parseInt(part[2]), Integer.parseInt(part[3])))
                .toList();
    }

    public static Workshop workshop(String name) {
        JsonNode node = node(name);
        return new Workshop(
                node.get("now").asInt(),
                node.get("horizon").asInt(),
                list(node.get("personWindows"), person -> list(person, Instances::span)),
                list(node.get("glueHalfDays"), Instances::span),
                node.get("glueWarmUp").asInt(),
                list(node.get("clampCapacity"), JsonNode::asInt),
                node.get("cupboardCapacity").asInt(),
                list(node.get("jobs"), Instances::job),
                list(node.get("steps"), Instances::step));
    }

    /** The proven optimum, or the best cost known. */
    public static double bestCost(String name) {
        JsonNode node = node(name);
        return node.get(node.has("provenOptimum") ? "provenOptimum" : "bestKnown")
                .asDouble();
    }

    public static double lowerBound(String name) {
        return node(name).get("lowerBound").asDouble();
    }

    /** The plan that reaches the proven optimum. */
    public static Plan optimalPlan(String name) {
        return new Plan(list(
                node(name).get("plan"),
                pair -> new Placed(pair.get(0).asInt(), pair.get(1).asInt())));
    }

    private static JsonNode node(String name) {
        return JsonMapper.shared().readTree(text("workshop/" + name + ".json"));
    }

    private static String text(String name) {
        try (InputStream in = Instances.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("no test resource " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static <T> List<T> list(JsonNode array, Function<JsonNode, T> element) {
        List<T> list = new ArrayList<>();
        array.forEach(each -> list.add(element.apply(each)));
        return list;
    }

    private static Span span(JsonNode pair) {
        return new Span(pair.get(0).asInt(), pair.get(1).asInt());
    }

    private static Job job(JsonNode node) {
        return new Job(
                node.get("id").asInt(),
                node.get("kind").asString(),
                node.get("release").asInt(),
                node.get("due").asInt(),
                node.get("weight").asInt());
    }

    private static BenchStep step(JsonNode node) {
        return new BenchStep(
                node.get("id").asInt(),
                node.get("job").asInt(),
                node.get("name").asString(),
                node.get("hands").asInt(),
                node.get("wait").asInt(),
                node.get("persons").asInt(),
                node.get("samePersonAs").asInt(),
                node.get("holdsInstrument").asBoolean(),
                node.get("clamp").asInt(),
                node.get("clampQty").asInt(),
                node.get("cupboard").asInt(),
                node.get("hotGlue").asBoolean(),
                list(node.get("after"), JsonNode::asInt),
                node.get("maxLagFrom").asInt(),
                node.get("maxLag").asInt());
    }
}
