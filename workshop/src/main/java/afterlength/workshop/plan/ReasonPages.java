package afterlength.workshop.plan;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** Why a date is that date. */
final class ReasonPages implements Room {
    private final Frames frames;
    private final BenchPlans plans;

    ReasonPages(Frames frames, BenchPlans plans) {
        this.frames = frames;
        this.plans = plans;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/plan/steps/{step}", this::show);
    }

    private void show(Context context) {
        long step = Addresses.id(context, "step");
        if (!(plans.now() instanceof PlanAnswer.Planned planned)) {
            context.redirect("/plan");
            return;
        }
        CheckedPlan plan = planned.plan();
        PlannedLine line = plan.findStep(step).orElseThrow(() -> new NotHere("planned step", step));
        List<PlannedLine> pieces = plan.lines().stream()
                .filter(piece -> piece.piece().step().id() == step)
                .toList();
        Frame frame = frames.at(Frame.Place.TODAY, "Why then").back("/plan", "The week");
        Templates.show(context, new ReasonPage(frame, line, pieces, ReasonWords.of(plan, line)));
    }
}
