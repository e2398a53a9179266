package afterlength.workshop.plan;

import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import afterlength.planner.reason.WhatIf;
import afterlength.workshop.desk.Days;
import afterlength.workshop.work.Step;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What could be otherwise: one more of what is scarce, a Saturday morning, a step left out. */
final class Wishes {
    private static final Stretch MORNING = new Stretch(LocalTime.of(9, 0), LocalTime.of(13, 0));

    private final ShopWork work;
    private final Bench bench;

    private Wishes(ShopWork work) {
        this.work = work;
        this.bench = BenchBuilder.of(work);
    }

    /** @param without a step that could be left out, or 0 */
    static List<Wish> of(ShopWork work, long without) {
        Wishes wishes = new Wishes(work);
        List<Wish> all = new ArrayList<>();
        wishes.without(without).ifPresent(all::add);
        all.add(wishes.with(
                "one more joint could be clamped at once", WhatIf.oneMoreClamp(wishes.bench.workshop(), 0)));
        if (work.rules().cupboardPlaces() > 0) {
            all.add(wishes.with(
                    "one more instrument could dry free of dust",
                    WhatIf.oneMorePlaceInTheCupboard(wishes.bench.workshop())));
        }
        for (int person = 0; person < Math.min(2, wishes.bench.hands().size()); person++) {
            wishes.saturday(person).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Wish> without(long step) {
        return work.steps().stream()
                .filter(one -> one.id() == step)
                .findFirst()
                .map(one -> new Wish("“" + one.name() + "” were left out", BenchBuilder.of(work.with(others(one)))));
    }

    private List<Step> others(Step without) {
        return work.steps().stream().filter(one -> one.id() != without.id()).toList();
    }

    /** The next Saturday on which this person does not work. */
    private Optional<Wish> saturday(int person) {
        LocalDate saturday = Days.day(work.now()).with(TemporalAdjusters.next(DayOfWeek.SATURDAY));
        Span morning = new Span(minute(saturday, MORNING.from()), minute(saturday, MORNING.to()));
        boolean free = bench.workshop().personHours().get(person).stream()
                .noneMatch(span -> span.from() < morning.to() && morning.from() < span.to());
        return free
                ? Optional.of(with(
                        bench.hands().get(person) + " worked on Saturday "
                                + PlanWords.day(saturday).substring(4) + " from 09:00 to 13:00",
                        WhatIf.moreHours(bench.workshop(), person, morning)))
                : Optional.empty();
    }

    private int minute(LocalDate day, LocalTime time) {
        return bench.time().minute(Days.instant(day.atTime(time)));
    }

    private Wish with(String words, Workshop other) {
        return new Wish(
                words, new Bench(other, bench.time(), bench.visits(), bench.pieces(), bench.hands(), bench.begun()));
    }
}
