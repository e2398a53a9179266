package afterlength.workshop.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoursTextTest {
    @Test
    void aRunOfDaysAndASingleDayAreRead() {
        WeekHours hours = HoursText.read("Mon-Fri 09:00-12:30, 13:30–18.00\n\nSat 9:00 - 12:00");
        assertThat(hours.on(DayOfWeek.THURSDAY))
                .isEqualTo(List.of(
                        new Stretch(LocalTime.of(9, 0), LocalTime.of(12, 30)),
                        new Stretch(LocalTime.of(13, 30), LocalTime.of(18, 0))));
        assertThat(hours.findClosing(DayOfWeek.SATURDAY)).contains(LocalTime.of(12, 0));
        assertThat(hours.on(DayOfWeek.SUNDAY)).isEmpty();
    }

    @Test
    void aRunMayGoOverSunday() {
        WeekHours hours = HoursText.read("Sat-Mon 10:00-14:00");
        assertThat(hours.days().keySet())
                .containsExactlyInAnyOrder(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        WeekHours hours = HoursText.read("Mon-Tue 08:30-12:00, 13:15-17:40\nThu-Sat 10:00-14:00");
        assertThat(HoursText.read(hours.text())).isEqualTo(hours);
    }

    @Test
    void whatCannotBeReadSaysWhichLineAndHow() {
        assertThatThrownBy(() -> HoursText.read("Mon-Fri 09:00-18:00\nSaturday mornings"))
                .hasMessage(
                        "Line 2 is “Saturday mornings”, which is no day with hours. Write a day or a run of days, then from"
                                + " and to on the same day, such as Mon-Fri 09:00-12:30, 13:30-18:00.");
        assertThatThrownBy(() -> HoursText.read("Mon 18:00-09:00"))
                .hasMessageStartingWith("Line 1 is “Mon 18:00-09:00”");
        assertThatThrownBy(() -> HoursText.read("Mon 25:00-26:00"))
                .hasMessageStartingWith("Line 1 is “Mon 25:00-26:00”");
    }

    @Test
    void anHourIsWrittenOnce() {
        assertThatThrownBy(() -> HoursText.read("Mon-Fri 09:00-12:00\nFri 11:00-15:00"))
                .hasMessage(
                        "Line 2 is “Fri 11:00-15:00”, and its hours overlap others of Fri. Write each hour of a day once.");
    }
}
