package afterlength.start;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoShop;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

/** The demonstration shop, filled once and copied for each test that spoils it. */
final class FilledShop {
    private static final FilledShop ONE = new FilledShop();

    private boolean filled;
    private Path folder = Path.of("");

    private FilledShop() {}

    static Path copyTo(Path target) throws IOException {
        copy(ONE.get(), target);
        return target;
    }

    private synchronized Path get() throws IOException {
        if (!filled) {
            folder = Files.createTempDirectory("filled-shop-");
            Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
            DemoClock clock = new DemoClock(now, ZoneId.systemDefault());
            DemoShop.fill(House.of(ShopFolder.open(folder), clock).demoStores(clock), now);
            filled = true;
        }
        return folder;
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(from)) {
            all = walk.toList();
        }
        for (Path each : all) {
            Path target = to.resolve(from.relativize(each).toString());
            if (Files.isDirectory(each)) {
                Files.createDirectories(target);
            } else {
                Files.copy(each, target, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
