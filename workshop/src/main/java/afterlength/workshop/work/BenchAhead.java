package afterlength.workshop.work;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the bench plan says to Today and to the diary; wired in {@code start}. */
public interface BenchAhead {
    /** A shop that plans nothing: what is promised first comes first. */
    BenchAhead UNPLANNED = new BenchAhead() {
        @Override
        public Ahead at(Instant now) {
            return Ahead.NOTHING;
        }

        @Override
        public Optional<String> findPageAfter(DiaryEntry entry) {
            return Optional.empty();
        }
    };

    Ahead at(Instant now);

    /** Where a person should look after this was written; empty when the plan is not touched by it. */
    Optional<String> findPageAfter(DiaryEntry entry);

    /**
     * The plan as Today needs it.
     *
     * @param nextByVisit when hands come to a visit next
     * @param stepWords when a step is planned, as words
     * @param closesAt when the shop closes today, or null where the plan does not know
     * @param sentences what else the day holds: the glue, who is away
     */
    record Ahead(
            Map<Long, Instant> nextByVisit,
            Map<Long, String> stepWords,
            @Nullable LocalTime closesAt,
            List<String> sentences,
            boolean planned) {
        public static final Ahead NOTHING = new Ahead(Map.of(), Map.of(), null, List.of(), false);

        public Ahead {
            nextByVisit = Map.copyOf(nextByVisit);
            stepWords = Map.copyOf(stepWords);
            sentences = List.copyOf(sentences);
        }

        String words(Step step) {
            return stepWords.getOrDefault(step.id(), "");
        }

        /** The visits hands come to first, first; those they do not come to keep their order behind. */
        List<HouseVisit> inOrder(List<HouseVisit> house) {
            return house.stream()
                    .sorted(Comparator.comparing(visit -> nextByVisit.getOrDefault(visit.visitId(), Instant.MAX)))
                    .toList();
        }
    }
}
