package afterlength.workshop.handover;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.work.BenchAhead;
import afterlength.workshop.work.ComingCheck;
import afterlength.workshop.work.WorkRoom;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A violin went home on 4 November 2026 and was to come again a year later. */
class PromisedChecksTest {
    private static final LocalDate CHECK = HandedOverShop.TODAY.plusYears(1);

    @TempDir
    Path root;

    private HandedOverShop shop;
    private PromisedChecks checks;

    @BeforeEach
    void open() {
        shop = new HandedOverShop(root, "Ilse Tamm", GluedJoints.NONE);
        checks = new PromisedChecks(shop.ledger);
        shop.handOver("Dust it.", "");
    }

    @Test
    void aCheckIsToldFromThirtyDaysBeforeUntilNinetyAfter() {
        assertThat(checks.list(CHECK.minusDays(31))).isEmpty();
        assertThat(checks.list(CHECK.minusDays(30))).singleElement().satisfies(check -> {
            assertThat(check.instrument()).isEqualTo("Violin");
            assertThat(check.visit()).isEqualTo(shop.visit.number());
            assertThat(check.handedOverOn()).isEqualTo(HandedOverShop.TODAY);
            assertThat(check.checkOn()).isEqualTo(CHECK);
        });
        assertThat(checks.list(CHECK.plusDays(90))).hasSize(1);
        assertThat(checks.list(CHECK.plusDays(91))).isEmpty();
    }

    @Test
    void aCorrectedHandoverIsToldOnce() {
        shop.handOver("Dust it with a soft cloth.", "");
        assertThat(checks.list(CHECK)).extracting(ComingCheck::checkOn).containsExactly(CHECK);
    }

    @Test
    void whatCameAgainIsNotWaitedFor() {
        shop.visits.receiveAgain(new Visit(
                0, shop.visit.instrumentId(), "", CHECK.minusDays(12), "", "Check", "", "", "", null, null, 1));
        assertThat(checks.list(CHECK.minusDays(10))).isEmpty();
    }

    @Test
    void todayNamesItAndLeadsToTheInstrument() {
        Clock day = Clock.fixed(
                CHECK.minusDays(5)
                        .atTime(LocalTime.NOON)
                        .atZone(ZoneId.systemDefault())
                        .toInstant(),
                ZoneId.systemDefault());
        try (OpenedDesk desk = OpenedDesk.with(new WorkRoom(
                new Frames(shop.settings),
                shop.ledger,
                shop.settings,
                shop.instruments,
                shop.visits,
                List.of(),
                BenchAhead.UNPLANNED,
                checks,
                day))) {
            OpenedDesk.Answer page = desk.get("/");
            assertThat(page.words("[aria-labelledby=checks] .whose"))
                    .isEqualTo("Check promised for 4 November 2027, in 5 days");
            assertThat(page.page().select("[aria-labelledby=checks] a").attr("href"))
                    .isEqualTo("/instruments/" + shop.visit.instrumentId());
            assertThat(page.words(".answer")).isEqualTo("No instrument is in the house.");
        }
    }
}
