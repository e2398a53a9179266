package afterlength.workshop.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.air.AirRecord;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The mean over a time, and silence where most of that time was not read. */
class AirMeanStoreTest {
    private static final Instant FROM = Instant.parse("2026-11-01T00:00:00Z");

    @TempDir
    Path folder;

    private final long start_s = FROM.getEpochSecond();

    /** An hourly record of this many hours whose temperature and humidity rise by one each hour. */
    private void keep(AirShop shop, int hours) {
        long[] moments = new long[hours];
        float[] temperatures = new float[hours];
        float[] humidities = new float[hours];
        for (int n = 0; n < hours; n++) {
            moments[n] = start_s + 3600L * n;
            temperatures[n] = 10 + n;
            humidities[n] = 30 + n;
        }
        AirFile file = new AirFile(
                0,
                "a.csv",
                "0".repeat(64),
                "bench",
                hours,
                hours,
                start_s,
                moments[hours - 1],
                "",
                "",
                false,
                "bench",
                FROM);
        shop.climate.add(file, AirRecord.of(moments, temperatures, humidities));
    }

    @Test
    void theMeanIsThatOfTheTimeAskedFor() {
        AirShop shop = new AirShop(folder);
        keep(shop, 25);
        LoggedAir mean = shop.climate
                .findMean(FROM.plusSeconds(3600L * 4), FROM.plusSeconds(3600L * 14))
                .orElseThrow();
        assertThat(mean.temperature_C()).isCloseTo(19, within(1e-6));
        assertThat(mean.humidity_pct()).isCloseTo(39, within(1e-6));
        assertThat(mean.place()).isEqualTo("bench");
    }

    @Test
    void aTimeThatWasHardlyReadHasNoMean() {
        AirShop shop = new AirShop(folder);
        keep(shop, 25);
        assertThat(shop.climate.findMean(FROM, FROM.plusSeconds(3600L * 30))).isPresent();
        assertThat(shop.climate.findMean(FROM, FROM.plusSeconds(3600L * 40))).isEmpty();
        assertThat(shop.climate.findMean(FROM.minusSeconds(3600), FROM.minusSeconds(60)))
                .isEmpty();
    }
}
