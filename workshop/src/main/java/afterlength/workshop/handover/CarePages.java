package afterlength.workshop.handover;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Care advice as a file to print. */
public final class CarePages implements Room {
    private final VisitStore visits;
    private final CareSheets sheets;

    public CarePages(VisitStore visits, CareSheets sheets) {
        this.visits = visits;
        this.sheets = sheets;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/care.pdf", this::print);
    }

    private void print(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"care-" + visit.number() + ".pdf\"")
                .result(sheets.pdf(visit));
    }
}
