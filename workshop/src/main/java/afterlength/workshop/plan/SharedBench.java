package afterlength.workshop.plan;

import afterlength.planner.bench.Span;
import afterlength.workshop.desk.Days;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.Writing;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** What the cutting of all visits shares: hours, glue days, and who can do how long a piece of work. */
record SharedBench(
        ShopWork work,
        BenchTime time,
        int now,
        List<List<Span>> hours,
        List<Span> glue,
        Map<Longest, Integer> longest) {

    /** Whose longest piece of work, with hot glue or without; the same for every step, so it is reckoned once. */
    record Longest(int person, boolean hot) {}

    static SharedBench of(ShopWork work, BenchTime time, int now, List<List<Span>> hours, List<Span> glue) {
        return new SharedBench(work, time, now, hours, glue, new HashMap<>());
    }

    int everybody() {
        return (1 << hours.size()) - 1;
    }

    /** The longest piece of work somebody can do without a break; with hot glue, while the pot is hot. */
    int most_min(boolean hot, int person) {
        return IntStream.range(0, hours.size())
                .filter(who -> person < 0 || who == person)
                .map(who -> longest(who, hot))
                .max()
                .orElse(0);
    }

    /** Those who can do such a piece without a break; one who begins a step has to be able to end it. */
    int able(int length_min, boolean hot) {
        return IntStream.range(0, hours.size())
                .filter(who -> longest(who, hot) >= length_min)
                .map(who -> 1 << who)
                .sum();
    }

    private int longest(int person, boolean hot) {
        return longest.computeIfAbsent(new Longest(person, hot), any -> reckonLongest(person, hot));
    }

    private int reckonLongest(int person, boolean hot) {
        List<Span> own = hours.get(person);
        return (hot ? own.stream().flatMap(span -> glue.stream().map(half -> both(span, half))) : own.stream())
                .mapToInt(span -> span.to() - span.from())
                .max()
                .orElse(0);
    }

    private Span both(Span span, Span half) {
        return new Span(Math.max(span.from(), half.from() + work.rules().warmUp_min()), Math.min(span.to(), half.to()));
    }

    /** How long this person has been at it inside the hours. */
    int worked_min(int person, Instant since) {
        int from = time.minute(since);
        LocalDate first = Days.day(since);
        int days = (int) ChronoUnit.DAYS.between(first, Days.day(work.now())) + 1;
        return work.calendar().hours(work.hands().get(person), time, first, days).stream()
                .mapToInt(span -> Math.max(0, Math.min(now, span.to()) - Math.max(from, span.from())))
                .sum();
    }

    /** Whose hand the diary names for this start; the usual one when it names somebody else. */
    int begunBy(Step step, Instant since) {
        String hand = work.diary().stream()
                .map(DiaryEntry::writing)
                .filter(writing -> Objects.equals(writing.stepId(), step.id())
                        && writing.at().equals(since))
                .map(Writing::hand)
                .reduce("", (before, later) -> later);
        return Math.max(0, work.hands().indexOf(hand));
    }

    /** When the stretch ends in which this person works now; now itself outside the hours. */
    int goesHome(int person) {
        return hours.get(person).stream()
                .filter(span -> span.from() <= now && now < span.to())
                .mapToInt(Span::to)
                .findFirst()
                .orElse(now);
    }
}
