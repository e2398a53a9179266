package afterlength.workshop.climate;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** A real shop in a folder of its own, Wednesday 4 November 2026, with a place for logger files. */
final class AirShop {
    static final Instant NOW = Instant.parse("2026-11-04T13:15:00Z");

    final Ledger ledger;
    final SettingsStore settings;
    final ClimateStore climate;
    final Photographs loggerFiles;
    final Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);

    AirShop(Path root) {
        ShopFolder folder = ShopFolder.open(root);
        ledger = Ledger.open(folder);
        settings = new SettingsStore(ledger);
        climate = new ClimateStore(ledger);
        loggerFiles = Photographs.ofLoggers(folder);
    }

    OpenedDesk open() {
        return OpenedDesk.with(new ClimatePages(new Frames(settings), settings, climate, loggerFiles, clock));
    }

    /** Keeps a file as an upload does, and answers its name. */
    String bring(String file) throws IOException {
        return loggerFiles.keep(new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }

    /** Hourly readings at the bench that end at a moment, 20 °C and this humidity. */
    static String hourly(Instant end, int hours, double humidity_pct) {
        StringBuilder file = new StringBuilder("time,temp,RH\n");
        for (int n = hours; n >= 0; n--) {
            file.append(end.minusSeconds(n * 3600L).toString().replace("T", " ").replace("Z", ""))
                    .append(",20.0,")
                    .append(humidity_pct)
                    .append('\n');
        }
        return file.toString();
    }
}
