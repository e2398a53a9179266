package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.paper.SvgPen;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The plan of a week: drawing, days, promises. */
final class WeekPages implements Room {
    private final Frames frames;
    private final BenchPlans plans;
    private final PlanAgreed agreed;

    WeekPages(Frames frames, BenchPlans plans, PlanAgreed agreed) {
        this.frames = frames;
        this.plans = plans;
        this.agreed = agreed;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/plan", this::show);
        routes.post("/plan/stop", context -> {
            agreed.stop();
            context.redirect("/plan");
        });
    }

    private void show(Context context) {
        ShopWork work = plans.work();
        LocalDate first = first(context.queryParam("from"), Days.day(work.now()));
        PlanAnswer answer = BenchPlans.retimed(BenchBuilder.of(work), plans.kept());
        String notice = context.queryParam("taken") == null ? null : "The plan is taken. Today follows it.";
        Templates.show(context, page(work, first, answer, notice));
    }

    private WeekPage page(ShopWork work, LocalDate first, PlanAnswer answer, @Nullable String notice) {
        Frame frame = frames.at(Frame.Place.TODAY, "Seven days from " + Days.words(first))
                .back("/", "Today");
        if (answer instanceof PlanAnswer.Planned planned && !planned.plan().isEmpty()) {
            PlanChange change = PlanChange.of(planned.plan(), plans.kept(), work.calendar());
            return new WeekPage(
                    frame,
                    first,
                    PlanWords.sentence(change),
                    why(),
                    SvgPen.forScreen(WeekDrawing.of(planned.plan(), first, work, WeekDrawing.SCREEN_MM)),
                    days(planned.plan(), first, work),
                    change.visits(),
                    work.absences(),
                    "",
                    agreed.isPlanning(),
                    notice);
        }
        return new WeekPage(
                frame,
                first,
                sentence(answer),
                "",
                "",
                List.of(),
                List.of(),
                work.absences(),
                instead(answer),
                agreed.isPlanning(),
                notice);
    }

    private String why() {
        KeptPlan kept = plans.kept();
        return kept.isNone()
                ? "No plan was taken yet; this is the order of the work pages, laid over the hours. Plan again to find a better one."
                : "The plan taken " + Days.words(kept.writtenAt()) + " by " + kept.hand() + " (" + kept.because()
                        + "), moved along to this moment.";
    }

    private static String sentence(PlanAnswer answer) {
        return answer instanceof PlanAnswer.Planned ? "Nothing is waiting for hands." : "There is no plan to show.";
    }

    private static String instead(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Broken broken) {
            return "The plan that was made breaks a rule of the bench and is not shown. " + broken.words();
        }
        return answer instanceof PlanAnswer.NoRoom
                ? "The hours ahead do not hold the work in its order. Give the shop more hours on the shelf, or shorten an absence."
                : "A plan makes itself when an owner's agreement is written down.";
    }

    private static List<WeekPage.Day> days(CheckedPlan plan, LocalDate first, ShopWork work) {
        List<WeekPage.Day> days = new ArrayList<>();
        for (LocalDate day = first; day.isBefore(first.plusDays(7)); day = day.plusDays(1)) {
            LocalDate at = day;
            List<PlannedLine> lines = plan.lines().stream()
                    .filter(line -> line.place().hasHands() && line.day().equals(at))
                    .toList();
            List<String> notes = DayNotes.of(plan, work, at);
            if (!lines.isEmpty() || !notes.isEmpty()) {
                days.add(new WeekPage.Day(at, lines, notes));
            }
        }
        return days;
    }

    /** The day asked for, or today: what is past stands in the diaries. */
    private static LocalDate first(@Nullable String text, LocalDate today) {
        try {
            return text == null ? today : LocalDate.parse(text);
        } catch (DateTimeParseException notADay) {
            return today;
        }
    }
}
