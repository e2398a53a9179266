package afterlength.workshop.examination;

import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The condition report as a file to read, print and sign. */
public final class ReportPages implements Room {
    private final VisitHome home;
    private final SettingsStore settings;
    private final ConditionReports reports;

    public ReportPages(VisitHome home, SettingsStore settings, ConditionReports reports) {
        this.home = home;
        this.settings = settings;
        this.reports = reports;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/condition-report.pdf", this::report);
    }

    private void report(Context context) {
        Visit visit = home.visit(context);
        context.contentType("application/pdf")
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "inline; filename=\"condition-report-" + visit.number() + ".pdf\"")
                .result(reports.pdf(visit, settings.get()));
    }
}
