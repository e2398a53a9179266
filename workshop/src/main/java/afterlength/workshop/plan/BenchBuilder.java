package afterlength.workshop.plan;

import afterlength.planner.bench.Job;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import afterlength.workshop.desk.Days;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.HouseVisit;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.StepNow;
import afterlength.workshop.work.StepStatus;
import afterlength.workshop.work.VisitWork;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Makes the planner's bench from the shop's books. What is finished is left out; what has begun stands where it truly began. */
final class BenchBuilder {
    /** However much work there is, hours are looked at no further ahead. */
    private static final int MOST_WEEKS = 150;

    private static final int WEEK_MIN = 7 * 24 * 60;

    private final ShopWork shop;
    private final Map<Long, Pace> paces;
    private final BenchTime time;
    private final int now;
    private final Map<Long, List<Step>> stepsOf;
    private final Map<Long, List<DiaryEntry>> diaryOf;
    private final BenchDraft draft = new BenchDraft();
    private final List<Job> jobs = new ArrayList<>();
    private final List<HouseVisit> visits = new ArrayList<>();

    private BenchBuilder(ShopWork shop, Map<Long, Pace> paces) {
        this.shop = shop;
        this.paces = paces;
        this.time = BenchTime.weekOf(earliest(shop));
        this.now = time.next(shop.now());
        this.stepsOf = shop.steps().stream().collect(Collectors.groupingBy(Step::visitId));
        this.diaryOf = shop.diary().stream()
                .collect(Collectors.groupingBy(entry -> entry.writing().visitId()));
    }

    static Bench of(ShopWork shop) {
        return of(shop, Map.of());
    }

    /** With other than the usual figures for some visits. */
    static Bench of(ShopWork shop, Map<Long, Pace> paces) {
        return new BenchBuilder(shop, paces).build();
    }

    private Bench build() {
        List<Cutting> work = new ArrayList<>();
        for (HouseVisit visit : shop.house()) {
            List<StepNow> open = open(visit);
            if (!open.isEmpty()) {
                work.add(new Cutting(draft, visits.size(), open, paces.getOrDefault(visit.visitId(), Pace.USUAL)));
                visits.add(visit);
            }
        }
        int days = days(work);
        LocalDate today = Days.day(shop.now());
        List<List<Span>> hours = shop.hands().stream()
                .map(hand -> shop.calendar().hours(hand, time, today, days))
                .toList();
        List<Span> glue = shop.calendar().glueHours(time, today, days);
        int horizon = now + days * 24 * 60;
        visits.forEach(visit -> jobs.add(job(visit, horizon)));
        SharedBench all = SharedBench.of(shop, time, now, hours, glue);
        work.forEach(each -> each.cut(all));
        return new Bench(
                new Workshop(
                        now,
                        horizon,
                        hours,
                        glue,
                        shop.rules().warmUp_min(),
                        List.of(shop.rules().clampSets()),
                        shop.rules().cupboardPlaces(),
                        jobs,
                        draft.steps),
                time,
                visits,
                draft.pieces,
                shop.hands(),
                draft.begun);
    }

    private List<StepNow> open(HouseVisit visit) {
        return VisitWork.of(
                        stepsOf.getOrDefault(visit.visitId(), List.of()),
                        diaryOf.getOrDefault(visit.visitId(), List.of()),
                        shop.now())
                .steps()
                .stream()
                .filter(step -> !(step.status() instanceof StepStatus.Finished))
                .toList();
    }

    private Job job(HouseVisit visit, int horizon) {
        Urgency urgency = shop.urgency().getOrDefault(visit.visitId(), Urgency.ORDINARY);
        LocalDate promised = visit.promisedOn();
        if (promised == null) {
            boolean wanted = urgency != Urgency.ORDINARY;
            return new Job(jobs.size(), visit.instrument(), 0, wanted ? now : horizon, wanted ? urgency.weight() : 0);
        }
        int due = time.minute(shop.calendar().closingAt(promised));
        return new Job(jobs.size(), visit.instrument(), 0, due, urgency.weight());
    }

    /** Twice the weeks all hands need, and all waits of the longest visit behind one another. */
    private int days(List<Cutting> work) {
        double hands_min = work.stream().mapToInt(Cutting::hands_min).sum();
        double wait_min = work.stream().mapToInt(Cutting::wait_min).max().orElse(0);
        double week_min = Math.max(
                60,
                shop.hands().stream()
                        .mapToInt(hand -> shop.rules().of(hand).week_min())
                        .sum());
        double weeks = 6 + 2 * hands_min / week_min + 2 * wait_min / WEEK_MIN + weeksAway();
        return 7 * (int) Math.min(MOST_WEEKS, Math.ceil(weeks));
    }

    private double weeksAway() {
        return shop.absences().stream()
                .mapToLong(absence -> ChronoUnit.DAYS.between(absence.fromDay(), absence.toDay()) / 7 + 1)
                .sum();
    }

    /** The first moment of all that stands: what began weeks ago still has its place. */
    private static Instant earliest(ShopWork shop) {
        return shop.diary().stream()
                .map(entry -> entry.writing().at())
                .filter(at -> at.isAfter(shop.now().minus(MOST_WEEKS * 7L, ChronoUnit.DAYS)))
                .min(Instant::compareTo)
                .filter(at -> at.isBefore(shop.now()))
                .orElse(shop.now());
    }
}
