package afterlength.workshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.bench.Span;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In Berlin, where the night to 25 October 2026 has an hour more. */
class BenchTimeTest {
    private static final int DAY_MIN = 24 * 60;

    private final TimeZone usual = TimeZone.getDefault();
    private final BenchTime time = new BenchTime(Instant.parse("2026-10-18T22:00:00Z"));

    @BeforeEach
    void inBerlin() {
        TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
    }

    @AfterEach
    void asItWas() {
        TimeZone.setDefault(usual);
    }

    @Test
    void theWeekBeginsOnMondayAtMidnightInTheShop() {
        assertThat(BenchTime.weekOf(Instant.parse("2026-10-25T12:00:00Z"))).isEqualTo(time);
    }

    @Test
    void hoursAfterTheChangeLieAnHourLater() {
        BenchRules rules = BenchRules.fresh(LocalTime.of(18, 0));
        BenchCalendar calendar = new BenchCalendar(rules, List.of(), LocalTime.of(18, 0));
        List<Span> friday = calendar.hours("Ada", time, LocalDate.of(2026, 10, 23), 1);
        List<Span> monday = calendar.hours("Ada", time, LocalDate.of(2026, 10, 26), 1);
        assertThat(friday.get(0)).isEqualTo(new Span(4 * DAY_MIN + 9 * 60, 4 * DAY_MIN + 12 * 60 + 30));
        assertThat(monday.get(0)).isEqualTo(new Span(7 * DAY_MIN + 10 * 60, 7 * DAY_MIN + 13 * 60 + 30));
    }

    @Test
    void nowIsTheNextOfTheGridSoThatWhatJustHappenedIsPast() {
        assertThat(time.next(Instant.parse("2026-10-18T22:00:00Z"))).isEqualTo(5);
        assertThat(time.next(Instant.parse("2026-10-18T22:04:59Z"))).isEqualTo(5);
        assertThat(time.next(Instant.parse("2026-10-18T22:05:00Z"))).isEqualTo(10);
    }

    @Test
    void readyAfterClosingIsReadyOnTheNextOpenDay() {
        BenchCalendar calendar =
                new BenchCalendar(BenchRules.fresh(LocalTime.of(18, 0)), List.of(), LocalTime.of(18, 0));
        LocalDate friday = LocalDate.of(2026, 10, 23);
        assertThat(calendar.readyDay(Instant.parse("2026-10-23T16:00:00Z"))).isEqualTo(friday);
        assertThat(calendar.readyDay(Instant.parse("2026-10-23T16:01:00Z"))).isEqualTo(friday.plusDays(3));
    }
}
