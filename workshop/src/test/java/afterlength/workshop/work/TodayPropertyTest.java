package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws of Today for every house: nothing forgotten, nothing said twice, nothing offered that must wait. */
class TodayPropertyTest {
    private static final int HOUSES = 1500;

    @Test
    void everyVisitStandsInExactlyOnePlace() {
        for (long seed = 0; seed < HOUSES; seed++) {
            RandomHouse house = new RandomHouse(seed);
            assertThat(house.today().places())
                    .as("seed %d", seed)
                    .extracting(Place::visit)
                    .containsExactlyElementsOf(house.visits);
        }
    }

    @Test
    void everythingThatDriesIsListedAndTheFirstToComeFreeStandsFirst() {
        for (long seed = 0; seed < HOUSES; seed++) {
            RandomHouse house = new RandomHouse(seed);
            List<Drying> drying = house.today().drying();
            long waiting = house.steps.stream()
                    .filter(step -> StepStatus.of(step, house.diary, house.now) instanceof StepStatus.Waiting)
                    .count();
            assertThat(drying).as("seed %d", seed).hasSize((int) waiting);
            assertThat(drying)
                    .as("seed %d", seed)
                    .extracting(one -> one.status().until())
                    .isSorted();
        }
    }

    @Test
    void nothingIsOfferedOnAnInstrumentThatAWaitHolds() {
        for (long seed = 0; seed < HOUSES; seed++) {
            Today today = new RandomHouse(seed).today();
            for (Place.Ready ready : today.ready()) {
                assertThat(today.drying())
                        .as("seed %d", seed)
                        .noneMatch(drying -> drying.visit().equals(ready.visit())
                                && (drying.step().blocksInstrument()
                                        || drying.step()
                                                .sameTreatment(ready.turn().step())));
            }
        }
    }

    @Test
    void theSentenceNamesSomethingThatIsThere() {
        for (long seed = 0; seed < HOUSES; seed++) {
            Today today = new RandomHouse(seed).today();
            Sentence sentence = TodayWords.sentence(today);
            if (today.places().isEmpty()) {
                assertThat(sentence.lead()).as("seed %d", seed).isEqualTo("No instrument is in the house.");
            } else if (!today.inHand().isEmpty()) {
                assertThat(sentence.work())
                        .as("seed %d", seed)
                        .isEqualTo(today.inHand().get(0).turn().step().name());
            } else if (!today.ready().isEmpty()) {
                assertThat(today.ready())
                        .as("seed %d", seed)
                        .anyMatch(ready -> ready.turn().step().name().equals(sentence.work()));
            } else {
                assertThat(sentence.lead())
                        .as("seed %d", seed)
                        .startsWith(today.drying().isEmpty() ? "Nothing" : "Hands");
            }
        }
    }

    @Test
    void aStepThatFitsBeforeClosingIsPreferredToOneThatDoesNot() {
        for (long seed = 0; seed < HOUSES; seed++) {
            Today today = new RandomHouse(seed).today();
            boolean someFit = today.ready().stream()
                    .anyMatch(ready -> today.day().fits(ready.turn().step()));
            today.findNext()
                    .ifPresent(next ->
                            assertThat(today.day().fits(next.turn().step())).isEqualTo(someFit));
        }
    }

    /** Up to five visits with up to four steps each, worked on at random until some time of day. */
    private static final class RandomHouse {
        final List<HouseVisit> visits = new ArrayList<>();
        final List<Step> steps = new ArrayList<>();
        final List<DiaryEntry> diary = new ArrayList<>();
        final Instant now;
        private final SplittableRandom random;

        RandomHouse(long seed) {
            random = new SplittableRandom(seed);
            now = Told.MONDAY.plus(Duration.ofMinutes(random.nextInt(3000)));
            for (int visit = random.nextInt(6); visit > 0; visit--) {
                addVisit(visit);
            }
        }

        Today today() {
            return Today.of(visits, steps, diary, new DayLeft(now, LocalTime.of(18, 0)));
        }

        private void addVisit(long id) {
            visits.add(new HouseVisit(
                    id,
                    id,
                    "instrument " + id,
                    "2026-00" + id,
                    LocalDate.of(2026, 10, 1),
                    null,
                    random.nextInt(2),
                    random.nextInt(2),
                    random.nextInt(2)));
            for (int n = random.nextInt(5); n > 0; n--) {
                addStep(id, id * 10 + n);
            }
        }

        private void addStep(long visit, long id) {
            int typical = random.nextInt(400);
            double wait = random.nextBoolean() ? 0 : random.nextInt(1, 40);
            Step step = new Step(
                    id,
                    visit,
                    (long) random.nextInt(1, 3),
                    random.nextInt(100),
                    "step " + id,
                    0,
                    typical,
                    typical,
                    wait,
                    wait,
                    wait,
                    "",
                    random.nextBoolean(),
                    Step.Standing.IN_ORDER,
                    1);
            steps.add(step);
            for (int n = random.nextInt(3); n > 0; n--) {
                Instant at = Told.MONDAY.plus(Duration.ofMinutes(random.nextInt(3000)));
                diary.add(Told.entry(
                        id * 100 + n,
                        random.nextBoolean() ? Writing.started(step, at, "h") : Writing.done(step, at, null, "h")));
            }
        }
    }
}
