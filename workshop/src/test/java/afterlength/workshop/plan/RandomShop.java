package afterlength.workshop.plan;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Days;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.HouseVisit;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.Writing;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** A shop as chance has it: instruments in every state, one to three people, odd hours, somebody away. The seed makes it again. */
final class RandomShop {
    private static final List<String> NEEDS =
            List.of("", "hot glue, clamp", "clamp", "colours, dust free", "hot glue", "cupboard", "thin knife");

    private final SplittableRandom random;
    private final Instant now;
    private final List<HouseVisit> house = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<DiaryEntry> diary = new ArrayList<>();
    private final Map<Long, Urgency> urgency = new TreeMap<>();
    private final List<String> hands;

    private RandomShop(long seed) {
        random = new SplittableRandom(seed);
        now = Instant.parse("2026-11-04T00:00:00Z").plus(random.nextInt(14 * 24 * 60), ChronoUnit.MINUTES);
        hands = List.of("Ada", "Ben", "Cleo").subList(0, 1 + random.nextInt(3));
    }

    static ShopWork of(long seed) {
        return new RandomShop(seed).fill();
    }

    private ShopWork fill() {
        int visits = 1 + random.nextInt(7);
        for (long visit = 1; visit <= visits; visit++) {
            visit(visit);
        }
        return new ShopWork(
                now,
                new Settings("s", "", hands, "EUR", Money.NOTHING, 0, false, LocalTime.of(18, 0), false),
                rules(),
                absences(),
                urgency,
                house,
                steps,
                diary);
    }

    private void visit(long id) {
        LocalDate today = Days.day(now);
        LocalDate promised = random.nextInt(4) == 0 ? null : today.plusDays(random.nextInt(30) - 3);
        house.add(new HouseVisit(id, id, "Violin " + id, "2026-00" + id, today.minusDays(9), promised, 1, 1, 1));
        if (random.nextInt(3) == 0) {
            urgency.put(id, List.of(Urgency.values()).get(random.nextInt(3)));
        }
        int count = 1 + random.nextInt(7);
        int begun = random.nextInt(count + 1);
        Instant at = now.minus(Duration.ofHours(4L * count + random.nextInt(40)));
        for (int n = 0; n < count; n++) {
            Step step = step(id, n);
            steps.add(step);
            if (n < begun) {
                at = live(step, at, n == begun - 1);
            }
        }
    }

    private Step step(long visit, int n) {
        int low = random.nextInt(5) == 0 ? 0 : random.nextInt(60);
        int typical = low + random.nextInt(random.nextInt(5) == 0 ? 500 : 60);
        double wait_h = random.nextInt(3) == 0 ? 0 : random.nextInt(4) == 0 ? 192 : random.nextInt(30) / 2.0;
        return new Step(
                visit * 100 + n,
                visit,
                random.nextInt(5) == 0 ? null : visit * 10 + n / 3,
                n + 1,
                "step " + n,
                low,
                typical,
                typical + random.nextInt(60),
                wait_h / 2,
                wait_h,
                wait_h * 2,
                NEEDS.get(random.nextInt(NEEDS.size())),
                random.nextBoolean(),
                Step.Standing.IN_ORDER,
                1);
    }

    /** Started, and perhaps done, and perhaps found not dry. */
    private Instant live(Step step, Instant at, boolean last) {
        String hand = hands.get(random.nextInt(hands.size()));
        write(Writing.started(step, at, hand));
        Instant done = at.plus(Duration.ofMinutes(5L + random.nextInt(90)));
        if (!done.isBefore(now) || (last && random.nextInt(3) == 0)) {
            return at;
        }
        write(Writing.done(step, done, 30, hand));
        Instant looked = done.plus(Duration.ofMinutes(30));
        if (looked.isBefore(now) && step.waitTypicalH() > 1 && random.nextInt(4) == 0) {
            write(Writing.notDry(step, looked, 1.0 + random.nextInt(60), hand));
        }
        Instant next = done.plus(Duration.ofMinutes(random.nextInt(120)));
        return next.isBefore(now.minusSeconds(60)) ? next : now.minusSeconds(60);
    }

    private void write(Writing writing) {
        long id = diary.size() + 1L;
        diary.add(new DiaryEntry(id, null, false, "step", writing.at(), id, writing.at(), writing));
        if (writing.what() == DiaryEvent.NOTE) {
            throw new IllegalStateException("notes change nothing");
        }
    }

    private BenchRules rules() {
        WeekHours odd = HoursText.read("Mon-Tue 08:30-12:00, 13:15-17:40\nThu-Sat 10:00-14:00");
        BenchRules fresh = BenchRules.fresh(LocalTime.of(18, 0));
        return new BenchRules(
                random.nextBoolean() ? fresh.hours() : odd,
                random.nextInt(3) == 0 ? Map.of("Ben", HoursText.read("Wed-Thu 09:00-11:30")) : Map.of(),
                random.nextBoolean() ? new WeekHours(Map.of()) : HoursText.read("Mon-Thu 09:00-12:00"),
                5 * random.nextInt(9),
                1 + random.nextInt(4),
                random.nextInt(4));
    }

    private List<Absence> absences() {
        if (random.nextInt(3) > 0) {
            return List.of();
        }
        LocalDate from = Days.day(now).plusDays(random.nextInt(5));
        return List.of(
                new Absence(1, null, false, hands.get(0), from, from.plusDays(random.nextInt(8)), "", "Ada", now));
    }
}
