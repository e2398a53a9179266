package afterlength.workshop.plan;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Span;
import afterlength.workshop.desk.Days;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What a day holds beside its steps: when the glue is hot, who is away, what is ready. */
final class DayNotes {
    private final CheckedPlan plan;
    private final ShopWork work;
    private final LocalDate day;

    private DayNotes(CheckedPlan plan, ShopWork work, LocalDate day) {
        this.plan = plan;
        this.work = work;
        this.day = day;
    }

    static List<String> of(CheckedPlan plan, ShopWork work, LocalDate day) {
        DayNotes notes = new DayNotes(plan, work, day);
        List<String> all = new ArrayList<>(notes.glue());
        all.addAll(notes.away());
        all.addAll(notes.ready());
        return all;
    }

    /** The pot is heated once for a half-day and serves every joint in it. */
    private List<String> glue() {
        List<String> notes = new ArrayList<>();
        for (Span half : plan.bench().workshop().glueHalfDays()) {
            List<PlannedLine> joints = plan.lines().stream()
                    .filter(line -> line.day().equals(day) && !line.piece().begun())
                    .filter(line -> isIn(half, line))
                    .toList();
            if (!joints.isEmpty()) {
                notes.add(words(half, joints));
            }
        }
        return notes;
    }

    private boolean isIn(Span half, PlannedLine line) {
        BenchStep step = plan.benchStep(line);
        int start = plan.plan().of(step).start();
        return step.hotGlue() && half.from() <= start && start < half.to();
    }

    private String words(Span half, List<PlannedLine> joints) {
        Instant heat =
                joints.get(0).place().start().minusSeconds(60L * work.rules().warmUp_min());
        Instant from = plan.bench().time().at(half.from());
        Instant latest = heat.isBefore(from) ? from : heat;
        return "Hot glue for " + PlanWords.numbered(joints.size(), "joint", "joints") + " from "
                + Days.clock(joints.get(0).place().start()) + ": warm the pot from " + Days.clock(latest) + ".";
    }

    private List<String> away() {
        return work.absences().stream()
                .filter(absence -> absence.holds(absence.away(), day))
                .map(absence -> absence.away() + " is away.")
                .toList();
    }

    private List<String> ready() {
        return plan.bench().visits().stream()
                .filter(visit -> plan.findReady(visit.visitId())
                        .map(ready -> work.calendar().readyDay(ready).equals(day))
                        .orElse(false))
                .map(visit -> "Ready: " + visit.instrument() + ".")
                .toList();
    }
}
