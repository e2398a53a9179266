package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.work.BenchAhead;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Tells Today what is planned, and the diary where a slip shows. */
public final class PlanAhead implements BenchAhead {
    private final BenchPlans plans;

    public PlanAhead(BenchPlans plans) {
        this.plans = plans;
    }

    @Override
    public Ahead at(Instant now) {
        KeptPlan kept = plans.kept();
        ShopWork work = plans.work();
        if (!(BenchPlans.retimed(BenchBuilder.of(work), kept) instanceof PlanAnswer.Planned planned)
                || planned.plan().isEmpty()) {
            return Ahead.NOTHING;
        }
        CheckedPlan plan = planned.plan();
        return new Ahead(
                kept.isNone() ? Map.of() : nextByVisit(plan),
                kept.isNone() ? Map.of() : stepWords(plan, now),
                closing(work.calendar(), Days.day(now)),
                DayNotes.of(plan, work, Days.day(now)),
                true);
    }

    /** On a closed day nothing fits before closing. */
    private static LocalTime closing(BenchCalendar calendar, LocalDate today) {
        return calendar.isOpen(today) ? calendar.closing(today) : LocalTime.MIDNIGHT;
    }

    private static Map<Long, Instant> nextByVisit(CheckedPlan plan) {
        Map<Long, Instant> next = new HashMap<>();
        plan.lines().stream()
                .filter(line -> !line.piece().begun())
                .forEach(line ->
                        next.putIfAbsent(line.visit().visitId(), line.place().start()));
        return next;
    }

    private static Map<Long, String> stepWords(CheckedPlan plan, Instant now) {
        Map<Long, String> words = new HashMap<>();
        plan.lines().stream()
                .filter(line -> !line.piece().begun() && line.place().hasHands())
                .forEach(line -> words.putIfAbsent(line.piece().step().id(), words(line, now)));
        return words;
    }

    private static String words(PlannedLine line, Instant now) {
        boolean soon = line.place().start().isBefore(now.plusSeconds(600));
        return "Planned for " + (soon ? "now" : Days.near(line.place().start(), now)) + ", hands: "
                + line.place().hand();
    }

    @Override
    public Optional<String> findPageAfter(DiaryEntry entry) {
        boolean slipped = entry.writing().what() == DiaryEvent.NOT_DRY && !entry.withdrawn();
        return slipped && plans.now() instanceof PlanAnswer.Planned
                ? Optional.of("/plan/again?entry=" + entry.id())
                : Optional.empty();
    }
}
