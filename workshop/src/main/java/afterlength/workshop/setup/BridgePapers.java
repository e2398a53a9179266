package afterlength.workshop.setup;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The papers beside the bridge sheet: crown templates, the card for the case, and the bridge for a cutter. */
public final class BridgePapers implements Room {
    private static final String PDF = "application/pdf";

    private final VisitStore visits;
    private final BridgeSheets sheets;

    public BridgePapers(VisitStore visits, BridgeSheets sheets) {
        this.visits = visits;
        this.sheets = sheets;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/crown-templates.pdf", this::crown);
        routes.get("/visits/{visit}/setup-card.pdf", this::card);
        routes.get("/visits/{visit}/bridge.svg", this::svg);
    }

    private void crown(Context context) {
        Visit visit = visit(context);
        named(context, PDF, "crown-" + visit.number() + ".pdf").result(sheets.crown(visit, moment(context)));
    }

    private void card(Context context) {
        Visit visit = visit(context);
        named(context, PDF, "setup-card-" + visit.number() + ".pdf").result(sheets.card(visit, moment(context)));
    }

    private void svg(Context context) {
        Visit visit = visit(context);
        named(context, "image/svg+xml", "bridge-" + visit.number() + ".svg").result(sheets.svg(visit, moment(context)));
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }

    private static Context named(Context context, String type, String name) {
        return context.contentType(type)
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "inline; filename=\"" + name + "\"");
    }

    private static SetupMoment moment(Context context) {
        return SetupMoment.of(context.queryParam("moment"));
    }
}
