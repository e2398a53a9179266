package afterlength.start.verbs;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import java.util.ArrayList;
import java.util.List;

/** A workshop as it is written down for the verb. Whatever comes later in a list may name only what comes before it. */
final class WorkshopDocument {
    /** Twenty years in minutes. */
    static final int LATEST = 20 * 366 * 24 * 60;

    private static final int MOST_PERSONS = 16;
    private static final int MOST_SPANS = 20_000;
    private static final int MOST_JOBS = 1000;
    private static final int MOST_STEPS = 5000;
    private static final int MOST_THINGS = 1000;
    private static final int LONGEST_HANDS = 24 * 60;
    private static final int LONGEST_WAIT = 366 * 24 * 60;

    private final DocumentReader document;

    private WorkshopDocument(DocumentReader document) {
        this.document = document;
    }

    static Workshop read(DocumentReader document) {
        document.hasAny("name", "unit", "objective", "bestKnown", "lowerBound", "provenOptimum", "plan");
        return new WorkshopDocument(document).read();
    }

    private Workshop read() {
        int now = document.get("now").asWhole(0, LATEST, "min");
        int horizon = document.get("horizon").asWhole(1, LATEST, "min");
        List<List<Span>> hours = new ArrayList<>();
        for (DocumentValue person : document.get("personWindows").asList(1, MOST_PERSONS)) {
            hours.add(spans(person, horizon, "/personWindows/" + hours.size()));
        }
        List<Span> glue = spans(document.get("glueHalfDays"), horizon, "/glueHalfDays");
        int warmUp = document.get("glueWarmUp").asWhole(0, LONGEST_HANDS, "min");
        List<Integer> clamps = document.get("clampCapacity").asList(0, MOST_THINGS).stream()
                .map(kind -> kind.asWhole(0, MOST_THINGS, ""))
                .toList();
        int cupboard = document.get("cupboardCapacity").asWhole(0, MOST_THINGS, "");
        List<Job> jobs = jobs();
        List<BenchStep> steps = new ArrayList<>();
        for (DocumentValue step : document.get("steps").asList(1, MOST_STEPS)) {
            steps.add(step(step.asObject(), steps, jobs.size(), hours.size(), clamps.size()));
        }
        return new Workshop(now, horizon, hours, glue, warmUp, clamps, cupboard, jobs, steps);
    }

    private List<Span> spans(DocumentValue list, int horizon, String at) {
        List<Span> spans = new ArrayList<>();
        int reached = 0;
        for (DocumentValue pair : list.asList(0, MOST_SPANS)) {
            List<DocumentValue> ends = pair.asList(2, 2);
            if (ends.size() == 2) {
                Span span = new Span(
                        ends.get(0).asWhole(0, LATEST, "min"), ends.get(1).asWhole(0, LATEST, "min"));
                if (span.from() < reached || span.to() <= span.from()) {
                    document.refuse(
                            at + "/" + spans.size(),
                            null,
                            "The stretch " + span.from() + " to " + span.to()
                                    + " ends before it begins or begins before the last one ended. Give stretches in order.");
                }
                reached = Math.max(reached, span.to());
                spans.add(span);
            }
        }
        return spans.stream().filter(span -> span.to() <= horizon).toList();
    }

    private List<Job> jobs() {
        List<Job> jobs = new ArrayList<>();
        for (DocumentValue value : document.get("jobs").asList(1, MOST_JOBS)) {
            DocumentReader job = value.asObject();
            jobs.add(new Job(
                    job.get("id").asWhole(jobs.size(), jobs.size(), ""),
                    job.get("kind").asText(),
                    job.get("release").asWhole(0, LATEST, "min"),
                    job.get("due").asWhole(0, LATEST, "min"),
                    job.get("weight").asWhole(0, MOST_THINGS, "")));
        }
        return jobs;
    }

    private BenchStep step(DocumentReader step, List<BenchStep> before, int jobs, int persons, int clamps) {
        int id = before.size();
        BenchStep read = new BenchStep(
                step.get("id").asWhole(id, id, ""),
                step.get("job").asWhole(0, Math.max(0, jobs - 1), ""),
                step.get("name").asText(),
                step.get("hands").asWhole(1, LONGEST_HANDS, "min"),
                step.get("wait").asWhole(0, LONGEST_WAIT, "min"),
                step.get("persons").asWhole(1, (1 << Math.max(1, persons)) - 1, ""),
                step.get("samePersonAs").asWhole(-1, id - 1, ""),
                step.get("holdsInstrument").asTruth(),
                step.get("clamp").asWhole(-1, clamps - 1, ""),
                step.get("clampQty").asWhole(0, MOST_THINGS, ""),
                step.get("cupboard").asWhole(0, MOST_THINGS, ""),
                step.get("hotGlue").asTruth(),
                step.get("after").asList(0, MOST_STEPS).stream()
                        .map(other -> earlier(other, id))
                        .filter(other -> other >= 0)
                        .toList(),
                step.get("maxLagFrom").asWhole(-1, id - 1, ""),
                step.get("maxLag").asWhole(-1, LONGEST_WAIT, "min"));
        together(step, read, before);
        return read;
    }

    private int earlier(DocumentValue other, int id) {
        int known = other.asWhole(0, Math.max(0, id - 1), "");
        return id == 0 ? -1 : known;
    }

    /** What only two values together show. */
    private void together(DocumentReader step, BenchStep read, List<BenchStep> before) {
        int same = read.samePersonAs();
        if (same >= 0 && before.get(same).persons() != read.persons()) {
            step.refuse(
                    "/samePersonAs",
                    same,
                    "The step is for the same person as step " + same
                            + ", but other persons may do that one. Give both the same persons.");
        }
        int from = read.maxLagFrom();
        if (from >= 0 && read.maxLag() < before.get(from).length()) {
            step.refuse(
                    "/maxLag",
                    read.maxLag(),
                    "The step must begin within " + read.maxLag() + " min of step " + from + ", which itself takes "
                            + before.get(from).length() + " min. Give a longer time, or -1 for maxLagFrom.");
        }
    }
}
