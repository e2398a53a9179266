package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DaysTest {
    @ParameterizedTest
    @CsvSource({
        "2026-11-04T16:20:00Z, 16:20",
        "2026-11-05T00:00:00Z, tomorrow 00:00",
        "2026-11-03T23:59:00Z, yesterday 23:59",
        "2026-11-06T09:30:00Z, Friday 6 November 09:30",
        "2026-10-31T09:30:00Z, Saturday 31 October 09:30",
        "2027-01-02T09:30:00Z, '2 Jan 2027, 09:30'",
    })
    void aTimeNearNowIsSaidAsPeopleSayIt(String at, String words) {
        assertThat(Days.near(Instant.parse(at), Instant.parse("2026-11-04T13:15:00Z")))
                .isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-04, today",
        "2026-11-05, tomorrow",
        "2026-11-03, yesterday",
        "2026-11-10, in 6 days",
        "2026-11-02, 2 days ago",
    })
    void howFarADayLiesAway(LocalDate day, String words) {
        assertThat(Days.away(day, LocalDate.of(2026, 11, 4))).isEqualTo(words);
    }

    @Test
    void aLocalTimeComesBackAsTheSameInstant() {
        Instant at = Instant.parse("2026-11-04T13:15:00Z");
        assertThat(Days.instant(Days.local(at))).isEqualTo(at);
    }
}
