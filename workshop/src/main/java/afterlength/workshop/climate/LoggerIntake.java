package afterlength.workshop.climate;

import afterlength.craft.air.LayoutGuess;
import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.LoggerNote;
import afterlength.craft.air.LoggerReading;
import afterlength.craft.air.RejectedRows;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Takes a logger file in, in three steps: it is kept, its layout is confirmed on a trial, its readings are written. */
final class LoggerIntake {
    private static final int LONGEST_NAME = 120;

    private final Frames frames;
    private final SettingsStore settings;
    private final ClimateStore climate;
    private final Photographs originals;
    private final Clock clock;
    private final BiConsumer<Context, Typed> climatePage;

    LoggerIntake(
            Frames frames,
            SettingsStore settings,
            ClimateStore climate,
            Photographs originals,
            Clock clock,
            BiConsumer<Context, Typed> climatePage) {
        this.frames = frames;
        this.settings = settings;
        this.climate = climate;
        this.originals = originals;
        this.clock = clock;
        this.climatePage = climatePage;
    }

    void open(RoutesConfig routes) {
        routes.post("/shelf/climate/files", this::bring);
        routes.get("/shelf/climate/layout", this::look);
        routes.post("/shelf/climate/layout", this::read);
    }

    private void bring(Context context) {
        UploadedFile file = context.uploadedFile("file");
        Typed typed = Typed.from(context);
        if (file == null || file.filename().isBlank()) {
            typed.note("file", "No file was chosen. Choose the file that the logger's program exported.");
            climatePage.accept(context, typed);
            return;
        }
        try (InputStream content = file.content()) {
            String sha256 = originals.keep(content);
            context.redirect(
                    "/shelf/climate/layout?file=" + sha256 + "&name=" + Addresses.encoded(nameAlone(file.filename())));
        } catch (IOException full) {
            typed.note(
                    "file",
                    "The file could not be written to the shop's folder (" + full.getMessage()
                            + "). See whether the disk is full, then bring it again.");
            climatePage.accept(context, typed);
        }
    }

    /** Some browsers send the folder too; it is nobody's business. */
    private static String nameAlone(String fileName) {
        String name = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name;
    }

    private void look(Context context) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("file", context.queryParam("file") == null ? "" : context.queryParam("file"));
        fields.put("file_name", context.queryParam("name") == null ? "" : context.queryParam("name"));
        fields.put("place", climate.listPlaces().stream().findFirst().orElse("bench"));
        List<String> head = head(fields.get("file"));
        LayoutGuess.find(head).ifPresent(guess -> fields.putAll(LayoutForm.typedOf(guess)));
        show(context, Typed.known(fields), head, null);
    }

    private void read(Context context) {
        Typed typed = Typed.from(context);
        List<String> head = head(typed.raw("file"));
        String place = typed.required("place", "The place", 60);
        String name = typed.text("file_name", "The file's name", LONGEST_NAME);
        LoggerLayout layout = LayoutForm.read(typed, clock.getZone());
        LoggerReading reading = layout == null ? null : readThrough(typed.raw("file"), layout);
        if (reading != null && typed.sound() && typed.raw("do").equals("take") && canBeTaken(reading)) {
            take(context, typed, name, place, reading);
        } else {
            show(context, typed, head, reading);
        }
    }

    private static boolean canBeTaken(LoggerReading reading) {
        return !reading.broken() && reading.record().size() > 0;
    }

    private void take(Context context, Typed typed, String name, String place, LoggerReading reading) {
        if (climate.findSame(typed.raw("file"), place).isPresent()) {
            typed.note(
                    "place",
                    "This very file stands in the record of " + place
                            + " already. Put that away first to read it anew.");
            show(context, typed, head(typed.raw("file")), reading);
            return;
        }
        AirFile kept = climate.add(file(typed.raw("file"), name, place, reading), reading.record());
        context.redirect("/shelf/climate?place=" + Addresses.encoded(kept.place()));
    }

    private AirFile file(String sha256, String name, String place, LoggerReading reading) {
        var record = reading.record();
        return new AirFile(
                0,
                name.isBlank() ? "a logger file" : name,
                sha256,
                place,
                reading.rows(),
                record.size(),
                record.moment_s(0),
                record.moment_s(record.size() - 1),
                reading.rejected().stream().map(RejectedRows::text).collect(Collectors.joining("\n")),
                reading.notes().stream().map(LoggerNote::text).collect(Collectors.joining("\n")),
                false,
                settings.get().usualHand(),
                clock.instant().truncatedTo(ChronoUnit.SECONDS));
    }

    private void show(Context context, Typed typed, List<String> head, @Nullable LoggerReading tried) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new LayoutPage(
                        frames.at(Frame.Place.SHELF, "How is this file laid out?")
                                .back("/shelf/climate", "The air of the shop"),
                        typed,
                        head,
                        LayoutGuess.find(head).orElse(null),
                        tried,
                        clock.getZone().getId()));
    }

    private List<String> head(String sha256) {
        try (InputStream file = Files.newInputStream(path(sha256))) {
            return LoggerFile.head(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private LoggerReading readThrough(String sha256, LoggerLayout layout) {
        try (InputStream file = Files.newInputStream(path(sha256))) {
            return LoggerFile.read(file, layout);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Path path(String sha256) {
        if (!sha256.matches("[0-9a-f]{64}") || !Files.exists(originals.file(sha256))) {
            throw new NotHere("logger file", sha256.isEmpty() ? "without a name" : sha256);
        }
        return originals.file(sha256);
    }
}
