package afterlength.workshop.work;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Adding a step, and changing what is expected of one. */
final class StepPages implements Room {
    private final Frames frames;
    private final VisitStore visits;
    private final StepStore steps;
    private final TreatmentTitles titles;

    StepPages(Frames frames, Ledger ledger, VisitStore visits, StepStore steps) {
        this.frames = frames;
        this.visits = visits;
        this.steps = steps;
        this.titles = new TreatmentTitles(ledger);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/steps/new", context -> showNew(context, Typed.known(Map.of("blocks", "no"))));
        routes.post("/visits/{visit}/steps/new", this::add);
        routes.get("/steps/{step}/change", context -> {
            Step step = step(context);
            showChange(context, step, Typed.known(StepForm.typedOf(step)));
        });
        routes.post("/steps/{step}/change", this::change);
    }

    private void add(Context context) {
        long visit = visits.get(Addresses.id(context, "visit")).id();
        Typed typed = Typed.from(context);
        PlannedStep read = StepForm.read(typed);
        if (read == null) {
            showNew(context, typed);
        } else {
            goTo(context, steps.add(visit, treatment(typed, visit), read));
        }
    }

    private void change(Context context) {
        Step before = step(context);
        Typed typed = Typed.from(context);
        PlannedStep read = StepForm.read(typed);
        if (read != null
                && !steps.change(before.id(), Addresses.version(typed), treatment(typed, before.visitId()), read)) {
            Addresses.noteChangedMeanwhile(typed, StepForm.typedOf(before));
        }
        if (typed.sound()) {
            goTo(context, before);
        } else {
            showChange(context, before, typed);
        }
    }

    private void showNew(Context context, Typed typed) {
        long visit = visits.get(Addresses.id(context, "visit")).id();
        show(context, "Add a step", visit, "/visits/" + visit + "/steps/new", typed);
    }

    private void showChange(Context context, Step step, Typed typed) {
        show(context, "Change a step", step.visitId(), "/steps/" + step.id() + "/change", typed);
    }

    private void show(Context context, String title, long visit, String address, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new StepPage(
                        frames.of(title).back("/visits/" + visit + "/work", "Work"), address, titles.of(visit), typed));
    }

    private Step step(Context context) {
        return steps.get(Addresses.id(context, "step"));
    }

    /** One of the visit's own treatments, or none. */
    private @Nullable Long treatment(Typed typed, long visit) {
        return titles.of(visit).keySet().stream()
                .filter(id -> Long.toString(id).equals(typed.raw("treatment")))
                .findFirst()
                .orElse(null);
    }

    private static void goTo(Context context, Step step) {
        context.redirect("/visits/" + step.visitId() + "/work#step-" + step.id());
    }
}
