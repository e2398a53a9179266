package afterlength.start.demo;

import afterlength.craft.air.DayOrder;
import afterlength.craft.air.HumidityScale;
import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.LoggerNote;
import afterlength.craft.air.LoggerReading;
import afterlength.craft.air.RejectedRows;
import afterlength.craft.air.TemperatureScale;
import afterlength.workshop.climate.AirFile;
import afterlength.workshop.climate.LoggerFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * Two months of air at the bench, invented: a room that follows the day, a week of frost outside with heating inside, a night
 * without battery, and a few rows that no logger should write.
 */
final class DemoAir {
    private static final int HOURS = 62 * 24;
    private static final int EVERY_MIN = 30;
    private static final int FROST_FROM_H = 30 * 24;
    private static final int FROST_TO_H = 39 * 24;
    private static final int SILENT_FROM_H = 50 * 24 + 20;
    private static final int SILENT_TO_H = 51 * 24 + 7;

    private DemoAir() {}

    static void keep(DemoStores stores, Instant today, String hand) throws IOException {
        byte[] file = file(today).getBytes(StandardCharsets.UTF_8);
        String sha256 = stores.loggerFiles().keep(new ByteArrayInputStream(file));
        LoggerReading reading = LoggerFile.read(
                new ByteArrayInputStream(file), layout(stores.clock().getZone()));
        var record = reading.record();
        stores.climate()
                .add(
                        new AirFile(
                                0,
                                "bench-invented.csv",
                                sha256,
                                "bench",
                                reading.rows(),
                                record.size(),
                                record.moment_s(0),
                                record.moment_s(record.size() - 1),
                                reading.rejected().stream()
                                        .map(RejectedRows::text)
                                        .collect(Collectors.joining("\n")),
                                reading.notes().stream().map(LoggerNote::text).collect(Collectors.joining("\n")),
                                false,
                                hand,
                                today),
                        record);
    }

    /** Times in the file are those of a clock that stays, so that no hour comes twice. */
    private static LoggerLayout layout(ZoneId zone) {
        return new LoggerLayout(
                3,
                ',',
                '.',
                1,
                0,
                2,
                3,
                DayOrder.YEAR_FIRST,
                TemperatureScale.CELSIUS,
                HumidityScale.PER_CENT,
                zone,
                false);
    }

    private static String file(Instant today) {
        Instant start = today.truncatedTo(ChronoUnit.HOURS).minus(HOURS, ChronoUnit.HOURS);
        SplittableRandom random = new SplittableRandom(7);
        StringBuilder file =
                new StringBuilder("Invented readings for the demonstration\nSensor,bench\ntime,temperature,humidity\n");
        for (int n = 0; n < HOURS * 60 / EVERY_MIN; n++) {
            double hour = n * EVERY_MIN / 60.0;
            if (hour >= SILENT_FROM_H && hour < SILENT_TO_H) {
                continue;
            }
            String time = start.plus((long) n * EVERY_MIN, ChronoUnit.MINUTES)
                    .toString()
                    .replace("T", " ")
                    .replace("Z", "");
            file.append(time).append(',').append(row(hour, random)).append('\n');
            if (n == 700 || n == 1400) {
                file.append(time).append(",--,--\n");
            }
        }
        return file.append("end of record\n").toString();
    }

    private static String row(double hour, SplittableRandom random) {
        double ofDay = Math.sin(2 * Math.PI * (hour - 9) / 24);
        double frost = hour < FROST_FROM_H || hour > FROST_TO_H
                ? 0
                : Math.sin(Math.PI * (hour - FROST_FROM_H) / (FROST_TO_H - FROST_FROM_H));
        double t_C = 20.2 + 1.1 * ofDay + 0.6 * frost + random.nextDouble(-0.15, 0.15);
        double rh_pct = 50 - 3 * ofDay + 3 * Math.sin(hour / 90) - 24 * Math.sqrt(frost) + random.nextDouble(-0.8, 0.8);
        return String.format(Locale.ROOT, "%.2f,%.1f", t_C, rh_pct);
    }
}
