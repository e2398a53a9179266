package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Room;
import afterlength.workshop.paper.ICalendar;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** The plan on paper, and as a calendar file. */
final class PlanFiles implements Room {
    private final BenchPlans plans;

    PlanFiles(BenchPlans plans) {
        this.plans = plans;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/plan/day-sheet", this::sheet);
        routes.get("/plan/calendar.ics", this::calendar);
    }

    private void sheet(Context context) {
        ShopWork work = plans.work();
        if (BenchPlans.retimed(BenchBuilder.of(work), plans.kept()) instanceof PlanAnswer.Planned planned
                && !planned.plan().isEmpty()) {
            LocalDate day = day(context, work);
            context.contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"day-sheet-" + day + ".pdf\"")
                    .result(DaySheet.of(planned.plan(), work, day).pdf());
        } else {
            context.redirect("/plan");
        }
    }

    private static LocalDate day(Context context, ShopWork work) {
        String text = context.queryParam("day");
        try {
            return text == null ? DaySheet.openDay(Days.day(work.now()), work.calendar()) : LocalDate.parse(text);
        } catch (DateTimeParseException notADay) {
            return DaySheet.openDay(Days.day(work.now()), work.calendar());
        }
    }

    private void calendar(Context context) {
        if (plans.now() instanceof PlanAnswer.Planned planned) {
            context.contentType(ICalendar.MEDIA_TYPE)
                    .header("Content-Disposition", "attachment; filename=\"bench-plan.ics\"")
                    .result(PlanCalendar.of(planned.plan(), plans.clock().instant())
                            .getBytes(StandardCharsets.UTF_8));
        } else {
            context.redirect("/plan");
        }
    }
}
