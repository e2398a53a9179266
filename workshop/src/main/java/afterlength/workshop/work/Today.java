package afterlength.workshop.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The house at one time: where every visit stands, and what dries. Nothing is planned ahead here; of what can be done now the promised
 * day comes first, and the first that still fits before closing is what hands should do next.
 */
record Today(DayLeft day, List<Place> places, List<Drying> drying) {

    /** The visits keep the order they come in: by what was promised, then by arrival. */
    static Today of(List<HouseVisit> house, List<Step> steps, List<DiaryEntry> diary, DayLeft day) {
        Map<Long, List<Step>> stepsOf = steps.stream().collect(Collectors.groupingBy(Step::visitId));
        Map<Long, List<DiaryEntry>> diaryOf = diary.stream()
                .collect(Collectors.groupingBy(entry -> entry.writing().visitId()));
        List<Place> places = new ArrayList<>();
        List<Drying> drying = new ArrayList<>();
        for (HouseVisit visit : house) {
            VisitWork work = VisitWork.of(
                    stepsOf.getOrDefault(visit.visitId(), List.of()),
                    diaryOf.getOrDefault(visit.visitId(), List.of()),
                    day.now());
            places.add(Place.of(visit, work.turn()));
            work.listWaiting().stream()
                    .map(step -> new Drying(visit, step.step(), (StepStatus.Waiting) step.status()))
                    .forEach(drying::add);
        }
        drying.sort(Comparator.comparing(one -> one.status().until()));
        return new Today(day, List.copyOf(places), List.copyOf(drying));
    }

    List<Place.InHand> inHand() {
        return only(Place.InHand.class).toList();
    }

    /** What can be begun now, the promised day first. */
    List<Place.Ready> ready() {
        return only(Place.Ready.class).toList();
    }

    /** Other stages' work, what can go home first. */
    List<Place.AtDesk> atDesk() {
        return only(Place.AtDesk.class)
                .sorted(Comparator.comparing(Place.AtDesk::job))
                .toList();
    }

    /** What hands should begin next: the first that fits before closing, or else the first. */
    Optional<Place.Ready> findNext() {
        return ready().stream()
                .filter(one -> day.fits(one.turn().step()))
                .findFirst()
                .or(() -> ready().stream().findFirst());
    }

    /** The instrument that can go on first, once its wait is over. */
    Optional<Place.Resting> findFirstFree() {
        return only(Place.Resting.class)
                .min(Comparator.comparing(one -> one.turn().until()));
    }

    Instant now() {
        return day.now();
    }

    private <P extends Place> Stream<P> only(Class<P> kind) {
        return places.stream().filter(kind::isInstance).map(kind::cast);
    }
}
