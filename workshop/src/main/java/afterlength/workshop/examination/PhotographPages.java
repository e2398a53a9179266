package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The photographs of a visit: brought several at once, described, put away and brought back. */
public final class PhotographPages implements Room {
    private static final Typed FRESH = Typed.known(Map.of("moment", Moment.BEFORE.name()));

    private final VisitHome home;
    private final PhotographStore photographs;
    private final PhotographIntake intake;

    public PhotographPages(VisitHome home, PhotographStore photographs, PhotographIntake intake) {
        this.home = home;
        this.photographs = photographs;
        this.intake = intake;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/photographs", context -> show(context, List.of(), FRESH));
        routes.post("/visits/{visit}/photographs", this::bring);
        routes.get("/photographs/{photograph}/words", context -> showWords(context, null));
        routes.post("/photographs/{photograph}/words", this::describe);
        routes.post("/photographs/{photograph}/put-away", this::putAway);
        routes.post("/photographs/{photograph}/bring-back", this::bringBack);
    }

    private void bring(Context context) {
        Visit visit = home.visit(context);
        List<UploadedFile> files = BroughtFile.list(context);
        Typed typed = Typed.from(context);
        PhotographWords words = PhotographForm.read(typed);
        if (files.isEmpty()) {
            typed.note("files", "No file was chosen. Choose one or more pictures.");
        }
        List<Taken> taken = new ArrayList<>();
        if (typed.sound()) {
            files.forEach(file -> taken.add(intake.take(visit.id(), BroughtFile.read(file), words)));
        }
        boolean refused = taken.stream().anyMatch(Taken.Refused.class::isInstance);
        show(context, taken, typed);
        context.status(refused || !typed.sound() ? 422 : 200);
    }

    private void show(Context context, List<Taken> taken, Typed typed) {
        Visit visit = home.visit(context);
        List<Photograph> away = photographs.listPutAway(visit.id());
        Templates.show(
                context,
                new PhotographsPage(
                        home.frame(visit, "Photographs, visit " + visit.number()),
                        visit.id(),
                        photographs.list(visit.id()),
                        away,
                        taken,
                        findAsked(away, context.queryParam("put-away")),
                        typed));
    }

    private static @Nullable Photograph findAsked(List<Photograph> away, @Nullable String id) {
        return away.stream()
                .filter(photograph -> Long.toString(photograph.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    private void showWords(Context context, @Nullable Typed refused) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        Typed typed = refused == null ? PhotographForm.known(photograph) : refused;
        Addresses.status(context, typed);
        Templates.show(
                context,
                new PhotographWordsPage(
                        home.frame("Words for a picture", pageOf(photograph), "Photographs"), photograph, typed));
    }

    private synchronized void describe(Context context) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        Typed typed = Typed.from(context);
        PhotographWords words = PhotographForm.read(typed);
        Basis.check(typed, PhotographForm.typedOf(photograph));
        if (typed.sound()) {
            photographs.describe(photograph.id(), words);
            context.redirect(pageOf(photograph));
        } else {
            showWords(context, typed);
        }
    }

    private void putAway(Context context) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        photographs.putAway(photograph.id());
        context.redirect(pageOf(photograph) + "?put-away=" + photograph.id());
    }

    private void bringBack(Context context) {
        Photograph photograph = photographs.get(Addresses.id(context, "photograph"));
        photographs.bringBack(photograph.id());
        context.redirect(pageOf(photograph));
    }

    private static String pageOf(Photograph photograph) {
        return "/visits/" + photograph.visitId() + "/photographs";
    }
}
