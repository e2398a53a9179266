package afterlength.workshop.retouch;

import afterlength.craft.colour.FittedColorant;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The palette on the shelf: colours from an instrument's file or from typed colours. */
public final class PalettePages implements Room {
    private static final int LARGEST_FILE = 1_000_000;

    private final Frames frames;
    private final SettingsStore settings;
    private final PaletteStore palette;
    private final Clock clock;

    public PalettePages(Frames frames, SettingsStore settings, PaletteStore palette, Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.palette = palette;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/palette", this::show);
        routes.get("/shelf/palette/import", context -> showImport(context, Typed.empty(), null));
        routes.post("/shelf/palette/import", this::preview);
        routes.post("/shelf/palette/import/fit", this::fitFile);
        routes.get("/shelf/palette/new", context -> showTyped(context, handOnly()));
        routes.post("/shelf/palette/new", this::fitTyped);
        routes.get("/shelf/palette/{colour}", this::showColour);
        routes.post("/shelf/palette/{colour}/put-away", context -> {
            palette.putAway(colour(context).id());
            context.redirect("/shelf/palette");
        });
        routes.post("/shelf/palette/{colour}/take-back", context -> {
            palette.takeBack(colour(context).id());
            context.redirect("/shelf/palette");
        });
    }

    private void show(Context context) {
        Frame frame = frames.at(Frame.Place.SHELF, "The palette").back("/shelf", "Shelf");
        Templates.show(context, new PalettePage(frame, palette.list(), palette.listPutAway()));
    }

    private void showColour(Context context) {
        PaletteColour colour = colour(context);
        Templates.show(context, new PaletteColourPage(inPalette(colour.name()), colour, palette.films(colour.id())));
    }

    /** Nothing is kept yet: what was understood is shown, with everything that was not. */
    private void preview(Context context) {
        Typed typed = Typed.from(context);
        Map<String, String> known = new HashMap<>(typed.everything());
        Optional<UploadedFile> file = context.uploadedFiles("file").stream()
                .filter(one -> one.size() > 0)
                .findFirst();
        if (file.isPresent() && file.get().size() > LARGEST_FILE) {
            typed.note(
                    "file",
                    "The file has " + file.get().size() / 1000
                            + " kB; at most 1000 kB are read. Export fewer samples.");
            showImport(context, typed, null);
            return;
        }
        file.ifPresent(one -> known.put("text", text(one)));
        known.put("hand", settings.get().usualHand());
        Typed read = Typed.known(known);
        if (read.raw("text").isBlank()) {
            read.note("file", "No file was chosen and no lines were pasted. Choose the instrument's text file.");
            showImport(context, read, null);
        } else {
            showImport(context, read, InstrumentFile.read(read.raw("text")));
        }
    }

    private static String text(UploadedFile file) {
        try (InputStream content = file.content()) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void fitFile(Context context) {
        Typed typed = Typed.from(context);
        InstrumentFile file = InstrumentFile.read(typed.raw("text"));
        if (!keep(context, typed, PaletteForm.ofFile(typed, file))) {
            showImport(context, typed, file);
        }
    }

    private void fitTyped(Context context) {
        Typed typed = Typed.from(context);
        if (!keep(context, typed, PaletteForm.ofLab(typed))) {
            showTyped(context, typed);
        }
    }

    private boolean keep(Context context, Typed typed, @Nullable NewColour colour) {
        Optional<FittedColorant> fitted = colour == null ? Optional.empty() : PaletteForm.fit(typed, colour);
        if (colour == null || fitted.isEmpty()) {
            return false;
        }
        PaletteColour kept = palette.add(colour, fitted.get(), clock.instant());
        context.redirect("/shelf/palette/" + kept.id());
        return true;
    }

    private void showImport(Context context, Typed typed, @Nullable InstrumentFile file) {
        Addresses.status(context, typed);
        Templates.show(context, new PaletteImportPage(inPalette("Colours from an instrument"), typed, file));
    }

    private void showTyped(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(context, new PaletteTypedPage(inPalette("A colour from typed measurements"), typed));
    }

    private Typed handOnly() {
        return Typed.known(Map.of("hand", settings.get().usualHand()));
    }

    private Frame inPalette(String title) {
        return frames.at(Frame.Place.SHELF, title).back("/shelf/palette", "The palette");
    }

    private PaletteColour colour(Context context) {
        return palette.get(Addresses.id(context, "colour"));
    }
}
