package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Planning again after something has happened: both plans are shown with what they change, and one is taken or none. */
final class DraftPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final BenchPlans plans;
    private final Occasions occasions;
    private final Drafts drafts;

    DraftPages(Frames frames, SettingsStore settings, BenchPlans plans, Occasions occasions) {
        this.frames = frames;
        this.settings = settings;
        this.plans = plans;
        this.occasions = occasions;
        this.drafts = new Drafts(plans);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/plan/again", this::begin);
        routes.get("/plan/drafts/{draft}", this::show);
        routes.get("/plan/drafts/{draft}/better", this::showBetter);
        routes.post("/plan/drafts/{draft}/stop", context -> {
            find(context).ifPresent(Draft::stop);
            if (context.header("HX-Request") == null) {
                context.redirect("/plan/drafts/" + context.pathParam("draft"));
            } else {
                showBetter(context);
            }
        });
        routes.post("/plan/drafts/{draft}/take", this::take);
    }

    private void begin(Context context) {
        Occasion occasion = occasions.read(context);
        Draft draft = drafts.begin(occasion.words());
        context.redirect(
                "/plan/drafts/" + draft.id() + (occasion.visitId() == 0 ? "" : "?visit=" + occasion.visitId()));
    }

    private void show(Context context) {
        Optional<Draft> draft = find(context);
        if (draft.isEmpty()) {
            context.redirect("/plan/again");
            return;
        }
        Frame frame = frames.at(Frame.Place.TODAY, "Plan again").back("/plan", "The week");
        String visit = context.queryParam("visit");
        String workPage = visit != null && visit.matches("\\d{1,18}") ? "/visits/" + visit + "/work" : "";
        Templates.show(
                context,
                new DraftPage(
                        frame, draft.get(), DraftPart.better(draft.get()), DraftPart.moved(draft.get()), workPage));
    }

    private void showBetter(Context context) {
        Optional<Draft> draft = find(context);
        if (draft.isPresent()) {
            Templates.show(context, DraftPart.better(draft.get()));
        } else {
            context.header("HX-Redirect", "/plan/again");
        }
    }

    private void take(Context context) {
        Optional<Draft> draft = find(context);
        Optional<CheckedPlan> chosen =
                draft.flatMap(one -> "better".equals(context.formParam("which")) ? one.findBetter() : one.findMoved());
        if (draft.isEmpty() || chosen.isEmpty()) {
            context.redirect("/plan/again");
            return;
        }
        PlanChange change = PlanChange.of(
                chosen.get(), draft.get().kept(), draft.get().work().calendar());
        List<String> ticked = context.formParams("promise");
        plans.take(
                chosen.get(),
                draft.get().because(),
                settings.get().usualHand(),
                change.visits().stream().map(line -> planned(line, ticked)).toList());
        context.redirect("/plan?taken=yes");
    }

    private static PlannedVisit planned(PlanChange.VisitLine line, List<String> ticked) {
        @Nullable LocalDate before = line.visit().promisedOn();
        boolean promise =
                line.late() && ticked.contains(Long.toString(line.visit().visitId()));
        return new PlannedVisit(line.visit().visitId(), line.ready(), before, promise ? line.promise() : before);
    }

    private Optional<Draft> find(Context context) {
        return drafts.find(Objects.requireNonNull(context.pathParam("draft")));
    }
}
