package afterlength.workshop.examination;

import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Custody receipt and condition report as files to read, print and sign. */
public final class ReportPages implements Room {
    private final VisitHome home;
    private final SettingsStore settings;
    private final ConditionReports reports;
    private final CustodyReceipts receipts;

    public ReportPages(VisitHome home, SettingsStore settings, ConditionReports reports, CustodyReceipts receipts) {
        this.home = home;
        this.settings = settings;
        this.reports = reports;
        this.receipts = receipts;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/condition-report.pdf", this::report);
        routes.get("/visits/{visit}/receipt.pdf", this::receipt);
    }

    private void report(Context context) {
        Visit visit = home.visit(context);
        context.contentType("application/pdf")
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "inline; filename=\"condition-report-" + visit.number() + ".pdf\"")
                .result(reports.pdf(visit, settings.get()));
    }

    private void receipt(Context context) {
        Visit visit = home.visit(context);
        context.contentType("application/pdf")
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "inline; filename=\"receipt-" + visit.number() + ".pdf\"")
                .result(receipts.pdf(visit, settings.get()));
    }
}
