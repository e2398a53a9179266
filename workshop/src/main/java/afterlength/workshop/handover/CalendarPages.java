package afterlength.workshop.handover;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.paper.CalendarEntry;
import afterlength.workshop.paper.ICalendar;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Promised days and next checks as calendar files: of one visit, for its owner, and of the whole shop. No names stand in them, since a
 * calendar is often read by more people than the record.
 */
public final class CalendarPages implements Room {
    /** A missed check stays in the calendar as long as Today tells it. */
    private static final int DAYS_KEPT = PromisedChecks.DAYS_AFTER;

    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final HandoverStore handovers;
    private final Clock clock;

    public CalendarPages(InstrumentStore instruments, VisitStore visits, HandoverStore handovers, Clock clock) {
        this.instruments = instruments;
        this.visits = visits;
        this.handovers = handovers;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/dates.ics", this::ofVisit);
        routes.get("/calendar.ics", context -> send(context, "shop", all()));
    }

    private void ofVisit(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Handover handover = handovers.findNow(visit.id()).orElse(null);
        send(context, "visit-" + visit.number(), of(visit, handover));
    }

    private List<CalendarEntry> all() {
        List<CalendarEntry> entries = new ArrayList<>();
        visits.listInHouse().forEach(visit -> entries.addAll(of(visit, null)));
        handovers
                .listChecks(LocalDate.now(clock).minusDays(DAYS_KEPT))
                .forEach(handover -> entries.addAll(of(visits.get(handover.visitId()), handover)));
        return entries;
    }

    /** An instrument that went home is promised no more. */
    private List<CalendarEntry> of(Visit visit, @Nullable Handover handover) {
        Instrument instrument = instruments.get(visit.instrumentId());
        LocalDate promised = visit.promisedOn();
        LocalDate check = handover == null ? null : handover.nextCheckOn();
        Instant now = clock.instant();
        List<CalendarEntry> entries = new ArrayList<>();
        if (handover == null && promised != null) {
            entries.add(CalendarEntry.day(
                    "visit-" + visit.number() + "-promised@afterlength",
                    promised,
                    instrument.name() + ": promised",
                    "Visit " + visit.number(),
                    now));
        }
        if (check != null) {
            entries.add(CalendarEntry.day(
                    "visit-" + visit.number() + "-check@afterlength",
                    check,
                    instrument.name() + ": check",
                    "The measures of visit " + visit.number()
                            + " are taken again and laid beside those of the handover.",
                    now));
        }
        return entries;
    }

    private static void send(Context context, String name, List<CalendarEntry> entries) {
        context.contentType(ICalendar.MEDIA_TYPE)
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".ics\"")
                .result(ICalendar.of(entries).getBytes(StandardCharsets.UTF_8));
    }
}
