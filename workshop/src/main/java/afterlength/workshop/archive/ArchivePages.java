package afterlength.workshop.archive;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.ledger.ShopFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Objects;

/** On the shelf: making an archive, fetching it, reading one. */
public final class ArchivePages implements Room {
    private final Frames frames;
    private final ShopFolder folder;
    private final InstrumentStore instruments;
    private final OwnerStore owners;
    private final ArchiveJobs jobs;

    public ArchivePages(
            Frames frames, ShopFolder folder, InstrumentStore instruments, OwnerStore owners, ArchiveMaker maker) {
        this.frames = frames;
        this.folder = folder;
        this.instruments = instruments;
        this.owners = owners;
        jobs = new ArchiveJobs(maker);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/archive", this::show);
        routes.get("/shelf/archive/progress", context -> Templates.show(context, progress()));
        routes.post("/shelf/archive/make", this::make);
        routes.post("/shelf/archive/stop", context -> {
            jobs.find().ifPresent(ArchiveJob::stop);
            context.redirect("/shelf/archive");
        });
        routes.get("/shelf/archive/made", this::fetch);
        routes.post("/shelf/archive/read", this::read);
    }

    /** Lets go of an archive that lies ready, since something in it was erased. */
    public void forget() {
        jobs.find().ifPresent(ArchiveJob::stop);
        jobs.forget();
    }

    private void show(Context context) {
        String what = context.queryParam("what");
        show(context, Typed.known(Map.of("what", what == null ? "shop" : what, "folder", freeName())));
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.at(Frame.Place.SHELF, "Archives").back("/shelf", "Shelf");
        String asked =
                Objects.requireNonNullElse(context.queryParam("find"), "").strip();
        ArchiveChoices choices = ArchiveChoices.of(asked, typed.raw("what"), instruments, owners);
        Templates.show(
                context,
                new ArchivePage(frame, asked, choices.list(), choices.cut(), progress(), typed, beside().toString()));
    }

    private ArchiveProgress progress() {
        return new ArchiveProgress(jobs.find().orElse(null));
    }

    private void make(Context context) {
        Typed typed = Typed.from(context);
        jobs.begin(wish(typed.raw("what"), typed.ticked("without", "yes")));
        context.redirect("/shelf/archive");
    }

    private ArchiveWish wish(String what, boolean without) {
        if (what.equals("shop")) {
            return ArchiveWish.wholeShop();
        }
        if (!ArchiveChoices.names(what)) {
            throw new NotHere("archive of", what);
        }
        long id = Long.parseLong(what.substring(what.indexOf('-') + 1));
        return what.startsWith("owner")
                ? ArchiveWish.owner(owners.get(id).id())
                : ArchiveWish.instrument(instruments.get(id).id(), without);
    }

    private void fetch(Context context) {
        Path made = jobs.find().map(ArchiveJob::file).orElseThrow(() -> new NotHere("archive", "ready"));
        try {
            context.contentType("application/zip")
                    .header("Cache-Control", "no-store")
                    .header("Content-Length", Long.toString(Files.size(made)))
                    .header("Content-Disposition", "attachment; filename=\"" + made.getFileName() + "\"")
                    .result(Files.newInputStream(made));
        } catch (IOException gone) {
            throw new NotHere("archive", made.getFileName());
        }
    }

    private void read(Context context) {
        UploadedFile file = context.uploadedFile("archive");
        Typed typed = Typed.from(context);
        String name = typed.raw("folder").strip();
        if (!name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} _.-]{0,59}")) {
            typed.note(
                    "folder",
                    "The name of the folder is “" + name
                            + "”; write up to 60 letters, digits, spaces, points, hyphens, beginning with a letter or digit.");
        }
        if (file == null || file.size() == 0) {
            typed.note("archive", "No archive was chosen. Choose a file that this program made.");
        } else if (typed.sound()) {
            read(file, beside().resolve(name), typed);
        }
        show(context, typed);
    }

    /** A refusal is told beside the field as soon as it is known, otherwise where the work is followed. */
    private void read(UploadedFile file, Path place, Typed typed) {
        if (!jobs.beginReading(brought(file), place)) {
            typed.note("archive", "Another archive is being made or read. Wait until it is done, or stop it.");
            return;
        }
        jobs.find()
                .map(ArchiveJob::failure)
                .filter(failure -> !failure.isEmpty())
                .ifPresent(failure -> typed.note("archive", failure));
    }

    private static Path brought(UploadedFile file) {
        try (InputStream in = file.content()) {
            Path brought = Files.createTempFile("afterlength-brought-", ".zip");
            Files.copy(in, brought, StandardCopyOption.REPLACE_EXISTING);
            return brought;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Path beside() {
        Path parent = folder.root().getParent();
        return parent == null ? folder.root() : parent;
    }

    private String freeName() {
        String first = folder.root().getFileName() + "-from-archive";
        String name = first;
        for (int n = 2; Files.exists(beside().resolve(name)); n++) {
            name = first + "-" + n;
        }
        return name;
    }
}
