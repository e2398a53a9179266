package afterlength.workshop.climate;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.air.DayOrder;
import afterlength.craft.air.HumidityScale;
import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.LoggerReading;
import afterlength.craft.air.RowFault;
import afterlength.craft.air.TemperatureScale;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class LoggerFileTest {
    static final LoggerLayout ISO = new LoggerLayout(
            1,
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
            false);

    private static final String ROWS = "time,t °C,h\n2026-01-01 00:00,20,50\n2026-01-01 01:00,20,51\n";

    @Test
    void everyWayToEndALineAndToMarkTheOrderOfBytes() throws IOException {
        for (String file : new String[] {ROWS, ROWS.replace("\n", "\r\n"), ROWS.replace("\n", "\r"), "\uFEFF" + ROWS}) {
            assertThat(read(file, StandardCharsets.UTF_8).record().size()).isEqualTo(2);
        }
        assertThat(read("\uFEFF" + ROWS, StandardCharsets.UTF_16LE).record().size())
                .isEqualTo(2);
        assertThat(read("\uFEFF" + ROWS, StandardCharsets.UTF_16BE).record().size())
                .isEqualTo(2);
        assertThat(read(ROWS, StandardCharsets.ISO_8859_1).record().size()).isEqualTo(2);
        assertThat(read(ROWS.strip(), StandardCharsets.UTF_8).record().size()).isEqualTo(2);
    }

    /** Many megabytes without a line end costs a few kilobytes and one rejected row. */
    @Test
    void aFileWithoutLineEndsDoesNotFillTheMemory() throws IOException {
        LoggerReading reading = LoggerFile.read(new Endless(1L << 26), headless());
        assertThat(reading.rejected()).hasSize(1);
        assertThat(reading.rejected().get(0).fault()).isEqualTo(RowFault.TOO_LONG);
    }

    @Test
    void theHeadIsShort() throws IOException {
        byte[] many = "a line\n".repeat(1000).getBytes(StandardCharsets.UTF_8);
        assertThat(LoggerFile.head(new ByteArrayInputStream(many))).hasSize(LoggerFile.HEAD_LINES);
        assertThat(LoggerFile.head(new ByteArrayInputStream(new byte[0]))).isEmpty();
    }

    private static LoggerReading read(String file, Charset charset) throws IOException {
        return LoggerFile.read(new ByteArrayInputStream(file.getBytes(charset)), ISO);
    }

    private static LoggerLayout headless() {
        return new LoggerLayout(
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
                false);
    }

    /** One letter over and over. */
    private static final class Endless extends InputStream {
        private long left;

        Endless(long length) {
            left = length;
        }

        @Override
        public int read() {
            return left-- > 0 ? 'x' : -1;
        }

        @Override
        public int read(byte[] into, int from, int length) {
            if (left <= 0) {
                return -1;
            }
            java.util.Arrays.fill(into, from, from + length, (byte) 'x');
            left -= length;
            return length;
        }
    }
}
