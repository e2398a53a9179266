package afterlength.workshop.examination;

import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.picture.PictureFile;
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
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The cameras on the shelf: pictures are brought, a calibration is kept, put aside and taken back. */
public final class CameraPages implements Room {
    private static final String HERE = "/shelf/cameras";
    private static final int LONGEST_NAME = 80;

    private final Frames frames;
    private final SettingsStore settings;
    private final CalibratedCameraStore cameras;
    private final LensGathering gathering;
    private final CardPrintStore prints;
    private final CardSearches searches;
    private final Clock clock;

    public CameraPages(
            Frames frames,
            SettingsStore settings,
            CalibratedCameraStore cameras,
            LensGathering gathering,
            CardPrintStore prints,
            CardSearches searches,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.cameras = cameras;
        this.gathering = gathering;
        this.prints = prints;
        this.searches = searches;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(HERE, context -> show(context, Typed.empty(), Typed.empty(), fresh()));
        routes.get(HERE + "/gathered", context -> {
            context.header("Cache-Control", "no-store");
            Templates.show(context, part(fresh()));
        });
        routes.post(HERE + "/pictures", this::bring);
        routes.post(HERE + "/pictures/{picture}/take-out", context -> {
            gathering.takeOut(Addresses.id(context, "picture"));
            context.redirect(HERE);
        });
        routes.post(HERE + "/clear", context -> {
            gathering.clear();
            context.redirect(HERE);
        });
        routes.post(HERE + "/print", this::measureCard);
        routes.post(HERE + "/keep", this::keep);
        routes.post(HERE + "/{camera}/put-aside", context -> stand(context, true));
        routes.post(HERE + "/{camera}/take-back", context -> stand(context, false));
    }

    private Typed fresh() {
        return Typed.known(Map.of("hand", settings.get().usualHand()));
    }

    private GatheredPart part(Typed typed) {
        return GatheredPart.of(gathering, typed, settings.get().hands());
    }

    private void show(Context context, Typed typed, Typed cardTyped, Typed keepTyped) {
        Frame frame = frames.at(Frame.Place.SHELF, "Cameras").back("/shelf", "Shelf");
        List<CalibratedCamera> all = cameras.list();
        Addresses.status(context, keepTyped.sound() ? cardTyped.sound() ? typed : cardTyped : keepTyped);
        Templates.show(
                context,
                new CamerasPage(
                        frame,
                        all,
                        findPutAside(all, context.queryParam("aside")),
                        part(keepTyped),
                        prints.list(),
                        typed,
                        cardTyped));
    }

    private static @Nullable CalibratedCamera findPutAside(List<CalibratedCamera> all, @Nullable String id) {
        return all.stream()
                .filter(camera ->
                        camera.putAside() && Long.toString(camera.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    private void bring(Context context) {
        Typed typed = Typed.from(context);
        List<UploadedFile> files = BroughtFile.list(context);
        Integer number = typed.whole("number", "The number of the card", 1, CardPrintForm.HIGHEST_NUMBER);
        if (files.isEmpty()) {
            typed.note("files", "No file was chosen. Choose one or more pictures of a card.");
        }
        if (gathering.list().size() + files.size() > LensGathering.MOST) {
            typed.note(
                    "files",
                    files.size() + " pictures would be " + (gathering.list().size() + files.size())
                            + " with those brought before; at most " + LensGathering.MOST
                            + " are calibrated from at once. Take some out.");
        }
        if (!typed.sound()) {
            show(context, typed, Typed.empty(), fresh());
            return;
        }
        for (UploadedFile uploaded : files) {
            PictureFile file = BroughtFile.read(uploaded);
            gathering.bring(file, sha256(file), card -> prints.print(card, number));
        }
        context.redirect(HERE + "#gathered");
    }

    private static String sha256(PictureFile file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file.bytes()));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void measureCard(Context context) {
        Typed typed = Typed.from(context);
        if (CardPrintForm.keep(typed, prints, now())) {
            searches.forgetAll();
            context.redirect(HERE);
        } else {
            show(context, Typed.empty(), typed, fresh());
        }
    }

    private void keep(Context context) {
        Typed typed = Typed.from(context);
        String hand = typed.required("hand", "Calibrated by", LONGEST_NAME);
        Optional<GatheredCamera> asked = gathering.cameras().stream()
                .filter(camera -> Long.toString(camera.id()).equals(typed.raw("camera")))
                .findFirst();
        if (asked.isEmpty() || !(asked.get().answer() instanceof LensCalibrationAnswer.Calibrated solved)) {
            typed.note(
                    "camera",
                    "The pictures of this camera were taken out, or kept already, while the page was open. Bring them again.");
            show(context, Typed.empty(), Typed.empty(), typed);
            return;
        }
        if (!typed.sound()) {
            show(context, Typed.empty(), Typed.empty(), typed);
            return;
        }
        GatheredCamera camera = asked.get();
        cameras.add(CalibratedCamera.of(camera.camera(), solved, camera.pictures(), hand, now()));
        gathering.takeOut(camera.pictures());
        searches.forgetAll();
        context.redirect(HERE + "#calibrated");
    }

    private void stand(Context context, boolean aside) {
        long id = Addresses.id(context, "camera");
        if (aside) {
            cameras.putAside(id, now());
        } else {
            cameras.takeBack(id, now());
        }
        searches.forgetAll();
        context.redirect(HERE + (aside ? "?aside=" + id : "#calibrated"));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
