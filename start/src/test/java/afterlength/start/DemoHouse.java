package afterlength.start;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoShop;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** The demonstration shop, filled for a test and opened with the clock of the day. */
final class DemoHouse {
    private DemoHouse() {}

    static House in(Path folder) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        DemoClock clock = new DemoClock(now, ZoneId.systemDefault());
        try {
            DemoShop.fill(House.of(ShopFolder.open(folder), clock).demoStores(clock), now);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
    }
}
