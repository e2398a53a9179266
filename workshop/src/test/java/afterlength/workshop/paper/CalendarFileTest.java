package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.component.VEvent;
import ezvcard.Ezvcard;
import ezvcard.VCardVersion;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Calendars and cards, read back by general libraries and held against the letter of their standards. */
class CalendarFileTest {
    private static final Instant STAMP = Instant.parse("2026-03-01T09:00:00Z");

    @Test
    void aPromisedDayIsAWholeDay() {
        String file = ICalendar.of(List.of(CalendarEntry.day(
                "visit-3-promised@shop", LocalDate.of(2026, 3, 14), "Violin, promised", "Visit 2026-003", STAMP)));
        assertThat(file).isEqualTo("""
                BEGIN:VCALENDAR
                VERSION:2.0
                PRODID:-//Afterlength//Workshop//EN
                CALSCALE:GREGORIAN
                BEGIN:VEVENT
                UID:visit-3-promised@shop
                DTSTAMP:20260301T090000Z
                DTSTART;VALUE=DATE:20260314
                TRANSP:TRANSPARENT
                SUMMARY:Violin\\, promised
                DESCRIPTION:Visit 2026-003
                END:VEVENT
                END:VCALENDAR
                """.replace("\n", "\r\n"));
    }

    @Test
    void aGeneralLibraryReadsWhatWasMeantAndWarnsOfNothing() {
        String words =
                "Bratsche „Müller“; Steg, Stimme \\ Saiten – 中提琴 ".repeat(6).strip() + "\nzweite Zeile";
        String file = ICalendar.of(List.of(
                CalendarEntry.day("a@shop", LocalDate.of(2026, 12, 31), words, "", STAMP),
                CalendarEntry.span(
                        "b@shop",
                        Instant.parse("2026-10-24T16:00:00Z"),
                        Duration.ofMinutes(26 * 60 + 30),
                        "Clamped",
                        words,
                        STAMP)));
        biweekly.ICalendar read = Biweekly.parse(file).first();
        assertThat(read.validate(ICalVersion.V2_0).isEmpty()).isTrue();
        VEvent day = read.getEvents().get(0);
        VEvent span = read.getEvents().get(1);
        assertThat(day.getSummary().getValue()).isEqualTo(words);
        assertThat(day.getDateStart().getValue().hasTime()).isFalse();
        assertThat(span.getDescription().getValue()).isEqualTo(words);
        assertThat(span.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2026-10-24T16:00:00Z"));
        assertThat(span.getDuration().getValue()).hasToString("PT26H30M");
    }

    /** RFC 5545, 3.1: no line is longer than 75 octets, and none is broken inside a character. */
    @Test
    void longLinesAreFoldedBetweenCharacters() {
        String file = ICalendar.of(
                List.of(CalendarEntry.day("a@shop", LocalDate.of(2026, 1, 1), "提琴🎻é".repeat(40), "", STAMP)));
        for (String line : file.split("\r\n", -1)) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
            assertThat(line).doesNotContain("\uFFFD").doesNotContain("\n");
        }
        assertThat(file.replace("\r\n ", "")).contains("SUMMARY:" + "提琴🎻é".repeat(40));
    }

    @Test
    void aSpanOfNothingIsRefused() {
        assertThatThrownBy(() -> CalendarEntry.span("a", STAMP, Duration.ZERO, "x", "", STAMP))
                .hasMessage("a span lasts longer than PT0S");
    }

    @Test
    void aCardKeepsTheNameAsItWasWritten() {
        String card = VCard.of(
                "urn:uuid:4fbe8971-0bc3-424c-9c26-36c3e1eff6b1",
                "Øster, Anna; 王",
                "anna@example.org",
                "+44 0000 000000",
                "1 Long Lane\nSomewhere");
        ezvcard.VCard read = Ezvcard.parse(card).first();
        assertThat(read.validate(VCardVersion.V4_0).isEmpty()).isTrue();
        assertThat(read.getFormattedName().getValue()).isEqualTo("Øster, Anna; 王");
        assertThat(read.getEmails().get(0).getValue()).isEqualTo("anna@example.org");
        assertThat(read.getTelephoneNumbers().get(0).getText()).isEqualTo("+44 0000 000000");
        assertThat(read.getAddresses().get(0).getStreetAddress()).isEqualTo("1 Long Lane\nSomewhere");
    }

    @Test
    void whatIsEmptyIsLeftOut() {
        assertThat(VCard.of("urn:uuid:0", "Anna", "", "", ""))
                .doesNotContain("EMAIL")
                .doesNotContain("TEL")
                .doesNotContain("ADR");
    }
}
