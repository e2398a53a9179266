package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepStoreTest {
    private static final PlannedStep LOOK = new PlannedStep("look inside", 5, 10, 20, 0, 0, 0, "mirror", false);

    @TempDir
    Path folder;

    private Shop shop;
    private Visit visit;

    @BeforeEach
    void aVisitWithThreeSteps() {
        shop = new Shop(folder);
        visit = shop.receive("Viola", null);
        for (String name : new String[] {"a", "b", "c"}) {
            shop.steps.add(visit.id(), null, new PlannedStep(name, 1, 2, 3, 0, 0, 0, "", false));
        }
    }

    @Test
    void stepsMoveEarlierAndLaterAndStopAtTheEnds() {
        shop.steps.moveEarlier(shop.step(visit, "c").id());
        assertThat(shop.order(visit)).containsExactly("a", "c", "b");
        shop.steps.moveLater(shop.step(visit, "a").id());
        assertThat(shop.order(visit)).containsExactly("c", "a", "b");
        shop.steps.moveEarlier(shop.step(visit, "c").id());
        shop.steps.moveLater(shop.step(visit, "b").id());
        assertThat(shop.order(visit)).containsExactly("c", "a", "b");
    }

    @Test
    void aMovingStepPassesOverOneThatWasLeftOut() {
        shop.steps.drop(shop.step(visit, "b").id());
        shop.steps.moveEarlier(shop.step(visit, "c").id());
        assertThat(shop.order(visit)).containsExactly("c", "a");
        shop.steps.takeBack(shop.step(visit, "b").id());
        assertThat(shop.order(visit)).containsExactly("c", "b", "a");
    }

    @Test
    void anAddedStepStandsAtTheEnd() {
        shop.steps.add(visit.id(), null, LOOK);
        assertThat(shop.order(visit)).containsExactly("a", "b", "c", "look inside");
    }

    @Test
    void aStepTheDiaryTellsOfIsNotLeftOut() {
        Step a = shop.step(visit, "a");
        Instant now = shop.clock.instant();
        DiaryEntry entry = shop.diary.write(Writing.started(a, now, "h"), now);
        assertThat(shop.steps.drop(a.id())).isFalse();
        assertThat(shop.order(visit)).containsExactly("a", "b", "c");
        shop.diary.withdraw(entry.id(), now);
        assertThat(shop.steps.drop(a.id())).isTrue();
        assertThat(shop.order(visit)).containsExactly("b", "c");
    }

    @Test
    void aChangeFromAnOldFormIsRefused() {
        Step a = shop.step(visit, "a");
        assertThat(shop.steps.change(a.id(), a.version(), null, LOOK)).isTrue();
        assertThat(shop.steps.change(a.id(), a.version(), null, LOOK)).isFalse();
        assertThat(shop.steps.get(a.id())).returns("look inside", Step::name).returns("mirror", Step::needs);
    }

    @Test
    void aStepThatIsNotThereSaysSo() {
        assertThatThrownBy(() -> shop.steps.get(99))
                .isInstanceOf(NotHere.class)
                .hasMessage("There is no step 99 in this shop.");
    }

    @Test
    void figuresThatDoNotRiseAreRefused() {
        assertThatThrownBy(() -> new PlannedStep("x", 5, 4, 9, 0, 0, 0, "", false))
                .hasMessage(
                        "the hands-on minutes of “x” are 5.0, 4.0, 9.0; they must not be negative and must rise from low to high");
        assertThatThrownBy(() -> new PlannedStep("x", 1, 1, 1, -1, 0, Double.NaN, "", false))
                .hasMessage(
                        "the wait hours of “x” are -1.0, 0.0, NaN; they must not be negative and must rise from low to high");
    }
}
