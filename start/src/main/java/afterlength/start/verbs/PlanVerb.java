package afterlength.start.verbs;

import afterlength.planner.bench.Job;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.BrokenRule;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import afterlength.planner.engine.Effort;
import afterlength.planner.engine.Planner;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Who does what when, so that instruments are ready when promised. */
public final class PlanVerb implements Verb {
    /** A small workshop needs no two seconds. */
    private static final double SECONDS_PER_STEP = 0.02;

    private static final double MOST_SECONDS = 2;

    @Override
    public String name() {
        return "plan";
    }

    @Override
    public String summary() {
        return "who does what when: steps with waits, clamps, a drying cupboard and hot glue, by promised dates";
    }

    @Override
    public String example() {
        return """
                {
                  "now": 0, "horizon": 10080, "layings": 200,
                  "personWindows": [[[540, 750], [810, 1080], [1980, 2190], [2250, 2520]]],
                  "glueHalfDays": [[540, 750], [1980, 2190]],
                  "glueWarmUp": 30, "clampCapacity": [2], "cupboardCapacity": 1,
                  "jobs": [{ "id": 0, "kind": "seam", "release": 0, "due": 2520, "weight": 1 }],
                  "steps": [
                    { "id": 0, "job": 0, "name": "glue the seam", "hands": 30, "wait": 720, "persons": 1,
                      "samePersonAs": -1, "holdsInstrument": true, "clamp": 0, "clampQty": 1, "cupboard": 0,
                      "hotGlue": true, "after": [], "maxLagFrom": -1, "maxLag": -1 },
                    { "id": 1, "job": 0, "name": "string up", "hands": 40, "wait": 0, "persons": 1,
                      "samePersonAs": -1, "holdsInstrument": true, "clamp": -1, "clampQty": 0, "cupboard": 0,
                      "hotGlue": false, "after": [0], "maxLagFrom": -1, "maxLag": -1 }
                  ]
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  All times are whole minutes from a Monday 00:00.
                  now, horizon      present, and end of the calendar
                  personWindows     for each person the working hours, pairs [from, to] in order
                  glueHalfDays      pairs [from, to] during which glue can be hot; glueWarmUp minutes after the beginning
                  clampCapacity     how many of each kind of clamp; cupboardCapacity places for drying
                  jobs              id (its place in the list), kind, release, due, weight per hour late
                  steps             id (its place in the list), job, name, hands (minutes without a break), wait,
                                    persons (bit set: 1 the first, 2 the second, 3 both), samePersonAs, holdsInstrument,
                                    clamp and clampQty (held to the end of the wait), cupboard (during the wait), hotGlue,
                                    after (earlier steps), maxLagFrom and maxLag (start to start); -1 for none
                  layings           optional: stop after so many tries, the same on every machine

                Options: --seconds 2; --keep PLAN with --stability 6 (cost of each step that changes its day; what began
                before now stays); --check FILE PLAN judges a plan; --rcpsp FILE plans a .sm or .sch project.
                The answer holds plan (for each step start and person), cost (hours late by weight, 3 for each half-day of
                hot glue, 0.02 for each hour until ready), late (ids of jobs) and problems. A search finds good plans and
                proves nothing about better ones.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        return answer(question, Optional.empty(), Optional.empty(), Planner.STABILITY);
    }

    /** With a time to spend and a plan to go on from. */
    public Reply answer(
            DocumentReader question, Optional<Double> seconds, Optional<DocumentReader> before, double stability) {
        Optional<Integer> layings = question.find("layings").map(value -> value.asWhole(1, 10_000_000, ""));
        Workshop workshop = WorkshopDocument.read(question);
        Optional<Plan> kept =
                before.filter(plan -> !question.hasProblems()).map(plan -> PlanDocument.read(plan, workshop));
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        if (before.isPresent() && before.get().hasProblems()) {
            return new Reply.Refused(before.get().problems());
        }
        double time = seconds.orElse(
                Math.min(MOST_SECONDS, SECONDS_PER_STEP * workshop.steps().size()));
        Effort effort = layings.map(Effort::ofLayings).orElseGet(() -> Effort.ofSeconds(time));
        Optional<Plan> plan = kept.map(old -> Planner.replan(workshop, old, stability, effort))
                .orElseGet(() -> Planner.plan(workshop, effort));
        plan.ifPresentOrElse(found -> mustPass(workshop, found, kept), () -> question.refuse("/steps", null, NO_ROOM));
        return plan.<Reply>map(found -> new Reply.Answered(answer(workshop, found)))
                .orElseGet(() -> new Reply.Refused(question.problems()));
    }

    private static final String NO_ROOM =
            "The work does not fit: a step is longer than any stretch of hours of its person, or wants more clamps or places than there"
                    + " are, or the hours end too soon. Give longer hours, more days or shorter steps.";

    /** No plan leaves the house that the checker objects to. */
    private static void mustPass(Workshop workshop, Plan plan, Optional<Plan> kept) {
        List<BrokenRule> broken = PlanCheck.of(workshop, plan, kept);
        if (!broken.isEmpty()) {
            throw new IllegalStateException("the plan breaks its own rules: " + broken);
        }
    }

    private static AnswerDocument answer(Workshop workshop, Plan plan) {
        return new AnswerDocument()
                .putWholeRows(
                        "plan",
                        plan.placed().stream()
                                .map(place -> List.of(place.start(), place.person()))
                                .toList())
                .put("cost", PlanCost.of(workshop, plan))
                .putWhole(
                        "late",
                        PlanCost.late(workshop, plan).stream().map(Job::id).toList())
                .putTexts("problems", List.of());
    }

    /** What the checker says of a plan that somebody else made. */
    public Reply check(DocumentReader question, DocumentReader planDocument) {
        question.find("layings");
        Workshop workshop = WorkshopDocument.read(question);
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        Plan plan = PlanDocument.read(planDocument, workshop);
        if (!planDocument.hasProblems()) {
            Map<String, List<BrokenRule>> byPlace = PlanCheck.of(workshop, plan).stream()
                    .collect(Collectors.groupingBy(PlanVerb::place, LinkedHashMap::new, Collectors.toList()));
            byPlace.forEach((place, broken) -> planDocument.refuse(place, null, words(workshop, broken)));
        }
        return planDocument.hasProblems()
                ? new Reply.Refused(planDocument.problems())
                : new Reply.Answered(answer(workshop, plan));
    }

    private static String place(BrokenRule rule) {
        return "/plan" + (rule.step() < 0 ? "" : "/" + rule.step());
    }

    /** One place, one problem: all that is wrong with a step stands in it. */
    private static String words(Workshop workshop, List<BrokenRule> broken) {
        return broken.stream()
                .map(rule -> rule.words(id -> workshop.steps().get(id).name()))
                .collect(Collectors.joining(" "));
    }
}
