package afterlength.craft.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The two layouts that were described, and broken files: what is read, and that every other row is listed. */
class LoggerFilesTest {
    /** docs/sources.md#logger-layouts, layout (a): a dozen lines of heading, time before the date, month as a word. */
    @Test
    void layoutWithALongHeading() {
        String file = "Database,Workshop\nSensor,Bench\nSerial,1\n".repeat(4)
                + "time,temp,RH\n14:05 31/Jan/2026,23.06,54.91\n14:20 31/Jan/2026,21.38,55.14\n";
        LayoutGuess guess = LayoutGuess.find(file.lines().toList()).orElseThrow();
        assertThat(guess.linesBefore()).isEqualTo(13);
        assertThat(guess.headings()).containsExactly("time", "temp", "RH");
        assertThat(guess.mustAskForDayOrder()).isFalse();
        LoggerReading reading = Layouts.read(guessed(guess, DayOrder.DAY_FIRST), file);
        assertThat(reading.rejected()).isEmpty();
        assertThat(moments(reading)).containsExactly("2026-01-31T14:05:00Z", "2026-01-31T14:20:00Z");
        assertThat(reading.record().temperature_C(0)).isCloseTo(23.06, within(1e-5)); // a float
        assertThat(reading.record().humidity_pct(1)).isCloseTo(55.14, within(1e-5));
    }

    /** docs/sources.md#logger-layouts, layout (b): two columns of names first, ISO minutes. */
    @Test
    void layoutWithReceiverAndTransmitter() {
        String file = "RECEIVER,TRANSMITTER,DATE,TEMPERATURE,HUMIDITY\nR1,T4,2026-01-31 14:05,21.21,56.57\n";
        LayoutGuess guess = LayoutGuess.find(file.lines().toList()).orElseThrow();
        LoggerReading reading = Layouts.read(guessed(guess, DayOrder.YEAR_FIRST), file);
        assertThat(guess.temperatureColumn()).isEqualTo(4);
        assertThat(guess.humidityColumn()).isEqualTo(5);
        assertThat(moments(reading)).containsExactly("2026-01-31T14:05:00Z");
        assertThat(reading.rejected()).isEmpty();
    }

    @Test
    void semicolonsAndDecimalCommas() {
        String file = "Zeit;Temp;Feuchte\n01.02.2026 10:00;20,5;45,25\n01.02.2026 11:00;20.6;45,0\n";
        LayoutGuess guess = LayoutGuess.find(file.lines().toList()).orElseThrow();
        assertThat(guess.separator()).isEqualTo(';');
        assertThat(guess.decimalSign()).isEqualTo(',');
        assertThat(guess.mustAskForDayOrder()).isTrue();
        LoggerReading reading = Layouts.read(Layouts.european(), file);
        assertThat(reading.record().size()).isEqualTo(1);
        assertThat(Layouts.rejected(reading))
                .containsExactly("Line 3 has no readable temperature: 01.02.2026 11:00;20.6;45,0");
    }

    @Test
    void dayAndMonthAreNeverGuessed() {
        LoggerLayout monthFirst = with(Layouts.ISO, DayOrder.MONTH_FIRST);
        LoggerReading reading = Layouts.read(monthFirst, "t,c,h\n03/04/2026 10:00,20,45\n31/03/2026 10:00,20,45\n");
        assertThat(moments(reading)).containsExactly("2026-03-04T10:00:00Z");
        assertThat(Layouts.rejected(reading))
                .containsExactly("Line 3 has a time that cannot be read in the order of day and month that was given: "
                        + "31/03/2026 10:00,20,45");
    }

    @Test
    void fahrenheitAndFraction() {
        LoggerLayout layout = new LoggerLayout(
                1,
                ',',
                '.',
                1,
                0,
                2,
                3,
                DayOrder.MONTH_FIRST,
                TemperatureScale.FAHRENHEIT,
                HumidityScale.FRACTION,
                ZoneOffset.UTC,
                false);
        LoggerReading reading =
                Layouts.read(layout, "Date,Temp (°F),RH\n3/31/2026 2:05 PM,68.0,0.455\n3/31/2026 2:06 PM,68,45.5\n");
        assertThat(moments(reading)).containsExactly("2026-03-31T14:05:00Z");
        assertThat(reading.record().temperature_C(0)).isCloseTo(20, within(1e-5));
        assertThat(reading.record().humidity_pct(0)).isCloseTo(45.5, within(1e-5));
        assertThat(Layouts.rejected(reading))
                .containsExactly("Line 3 has a humidity outside 0 to 100 %: 3/31/2026 2:06 PM,68,45.5");
    }

    @Test
    void aFractionIsAskedForAndFahrenheitIsSeenInTheHeading() {
        LayoutGuess guess = LayoutGuess.find(List.of("Date,Temp (°F),RH", "2026-03-31 14:05,68.0,0.455"))
                .orElseThrow();
        assertThat(guess.temperatureScale()).isEqualTo(TemperatureScale.FAHRENHEIT);
        assertThat(guess.mustAskForHumidityScale()).isTrue();
    }

    /** On 25 October 2026 the clocks of Berlin go from 3 back to 2: the hour comes twice and both passes are read. */
    @Test
    void theHourThatComesTwice() {
        LoggerReading reading = Layouts.read(Layouts.european(), """
                t;c;h
                25.10.2026 01:30;20;50
                25.10.2026 02:00;20;51
                25.10.2026 02:30;20;52
                25.10.2026 02:00;20;53
                25.10.2026 02:30;20;54
                25.10.2026 03:00;20;55
                """);
        assertThat(moments(reading))
                .containsExactly(
                        "2026-10-24T23:30:00Z",
                        "2026-10-25T00:00:00Z",
                        "2026-10-25T00:30:00Z",
                        "2026-10-25T01:00:00Z",
                        "2026-10-25T01:30:00Z",
                        "2026-10-25T02:00:00Z");
        assertThat(reading.rejected()).isEmpty();
        assertThat(reading.notes()).containsExactly(new LoggerNote.HourTwice(5));
    }

    /** The same file read as a clock that stays: the second pass is listed, with the reason and what to do. */
    @Test
    void theHourThatComesTwiceOnAClockThatStays() {
        LoggerLayout stays = with(Layouts.ISO, DayOrder.YEAR_FIRST);
        LoggerReading reading = Layouts.read(
                stays,
                "t,c,h\n2026-10-25 02:00,20,51\n2026-10-25 02:30,20,52\n2026-10-25 02:00,20,53\n2026-10-25 02:30,20,54\n");
        assertThat(reading.record().size()).isEqualTo(2);
        assertThat(Layouts.rejected(reading))
                .containsExactly(
                        "Lines 4 to 5, each of them, gives other values for a time that was read already; the first are "
                                + "kept. If the clock was set back here, say that the logger follows summer time.");
    }

    @Test
    void theHourThatIsLeftOut() {
        LoggerReading reading =
                Layouts.read(Layouts.european(), "t;c;h\n29.03.2026 02:30;20;50\n29.03.2026 03:30;20;50\n");
        assertThat(moments(reading)).containsExactly("2026-03-29T01:30:00Z");
        assertThat(Layouts.rejected(reading))
                .containsExactly(
                        "Line 2 has a time that was left out when the clocks were set forward: 29.03.2026 02:30;20;50");
    }

    @Test
    void rowsOutOfOrderAndTwiceTheSame() {
        LoggerReading reading = Layouts.read(
                Layouts.ISO, "t,c,h\n2026-01-02 10:00,20,50\n2026-01-01 10:00,19,49\n2026-01-02 10:00,20,50\n");
        assertThat(moments(reading)).containsExactly("2026-01-01T10:00:00Z", "2026-01-02T10:00:00Z");
        assertThat(reading.record().temperature_C(0)).isEqualTo(19);
        assertThat(Layouts.rejected(reading)).containsExactly("Line 4 says the same as another row of the same time.");
        assertThat(reading.notes()).containsExactly(new LoggerNote.PutInOrder(1));
    }

    @Test
    void impossibleAndUnreadableRows() {
        LoggerReading reading = Layouts.read(Layouts.ISO, """
                t,c,h
                2026-01-01 00:00,85,50
                2026-01-01 00:10,-50.1,50
                2026-01-01 00:20,20,-1
                2026-01-01 00:30,20,n/a
                2026-01-01 00:40,,50
                2026-01-01 00:50
                2026-13-01 01:00,20,50
                2026-01-01 25:00,20,50

                2026-01-01 01:20,1e3,50
                2026-01-01 01:30,20,0x10
                END OF DATA
                """);
        assertThat(reading.record().size()).isZero();
        assertThat(reading.rows()).isEqualTo(11);
        assertThat(reading.rejectedCount()).isEqualTo(11);
        assertThat(reading.rejected())
                .extracting(RejectedRows::fault)
                .containsExactly(
                        RowFault.TEMPERATURE_IMPOSSIBLE,
                        RowFault.HUMIDITY_IMPOSSIBLE,
                        RowFault.HUMIDITY_UNREADABLE,
                        RowFault.TEMPERATURE_UNREADABLE,
                        RowFault.TOO_FEW_COLUMNS,
                        RowFault.TIME_UNREADABLE,
                        RowFault.TEMPERATURE_UNREADABLE,
                        RowFault.HUMIDITY_UNREADABLE,
                        RowFault.TOO_FEW_COLUMNS);
    }

    @Test
    void quotedColumnsAndOddLettersDoNoHarm() {
        LoggerReading reading = Layouts.read(
                Layouts.ISO, "t,c,h\n\"2026-01-01 00:00\",\"20.5 °C\",\" 45 % \"\n\u0000\ud800,\"unclosed,20,50\n");
        assertThat(reading.record().size()).isEqualTo(1);
        assertThat(reading.rejectedCount()).isEqualTo(1);
    }

    /** Without a heading the mark of byte order stands before the first time. */
    @Test
    void aMarkOfByteOrderIsNoPartOfTheTime() {
        LoggerReader reader = new LoggerReader(new LoggerLayout(
                0,
                ',',
                '.',
                1,
                0,
                2,
                3,
                DayOrder.YEAR_FIRST,
                TemperatureScale.CELSIUS,
                HumidityScale.PER_CENT,
                ZoneOffset.UTC,
                false));
        reader.line("\uFEFF2026-01-01 00:00,20,50");
        assertThat(moments(reader.finish())).containsExactly("2026-01-01T00:00:00Z");
    }

    @Test
    void aRowWithoutEnd() {
        LoggerReading reading = Layouts.read(Layouts.ISO, "t,c,h\n" + "x".repeat(5000));
        assertThat(reading.rejected().get(0).fault()).isEqualTo(RowFault.TOO_LONG);
        assertThat(reading.rejected().get(0).firstText()).isEqualTo("x".repeat(80) + "…");
    }

    /** A million equal faults are one entry; faults that alternate for ever stop the reading, and that is said. */
    @Test
    void aFileOfFaultsStaysSmall() {
        LoggerReader equal = new LoggerReader(Layouts.ISO);
        LoggerReader alternating = new LoggerReader(Layouts.ISO);
        int pushed = 0;
        for (int n = 0; n < 100_000; n++) {
            equal.line("2026-01-01 00:00,x,50");
            if (alternating.wantsMore()) {
                alternating.line(n % 2 == 0 ? "2026-01-01 00:00,x,50" : "x");
                pushed++;
            }
        }
        assertThat(equal.finish().rejected()).hasSize(1);
        LoggerReading broken = alternating.finish();
        assertThat(broken.broken()).isTrue();
        assertThat(broken.rejectedCount()).isEqualTo(pushed - 1);
        assertThat(broken.notes()).containsExactly(new LoggerNote.NotLaidOutSo(pushed));
    }

    @Test
    void aFileThatIsNoLoggerFileHasNoLayout() {
        assertThat(LayoutGuess.find(List.of("", "Dear customer,", "1,2,3"))).isEmpty();
        assertThat(LayoutGuess.find(List.of())).isEmpty();
    }

    private static LoggerLayout guessed(LayoutGuess guess, DayOrder order) {
        return new LoggerLayout(
                guess.linesBefore(),
                guess.separator(),
                guess.decimalSign(),
                guess.timeColumn(),
                guess.dateColumn(),
                guess.temperatureColumn(),
                guess.humidityColumn(),
                order,
                guess.temperatureScale(),
                HumidityScale.PER_CENT,
                ZoneId.of("UTC"),
                false);
    }

    private static LoggerLayout with(LoggerLayout layout, DayOrder order) {
        return new LoggerLayout(
                layout.linesBefore(),
                layout.separator(),
                layout.decimalSign(),
                layout.timeColumn(),
                layout.dateColumn(),
                layout.temperatureColumn(),
                layout.humidityColumn(),
                order,
                layout.temperatureScale(),
                layout.humidityScale(),
                layout.zone(),
                layout.summerTime());
    }

    private static List<String> moments(LoggerReading reading) {
        List<String> moments = new ArrayList<>();
        for (int n = 0; n < reading.record().size(); n++) {
            moments.add(Instant.ofEpochSecond(reading.record().moment_s(n)).toString());
        }
        return moments;
    }
}
