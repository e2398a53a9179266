package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measures of a visit: written, corrected, withdrawn and brought back. */
public final class MeasurePages implements Room {
    private final VisitHome home;
    private final SettingsStore settings;
    private final MeasureStore measures;
    private final RoomAir roomAir;
    private final Clock clock;

    public MeasurePages(VisitHome home, SettingsStore settings, MeasureStore measures, RoomAir roomAir, Clock clock) {
        this.home = home;
        this.settings = settings;
        this.measures = measures;
        this.roomAir = roomAir;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/measures", context -> show(context, null));
        routes.post("/visits/{visit}/measures", this::write);
        routes.get("/measures/{measure}/correct", this::openCorrection);
        routes.post("/measures/{measure}/correct", this::correct);
        routes.post("/measures/{measure}/withdraw", this::withdraw);
        routes.post("/measures/{measure}/bring-back", this::bringBack);
        routes.get(
                "/air/moisture",
                context -> Templates.show(context, MoistureLine.of(Typed.knownAll(context.queryParamMap()))));
    }

    private void show(Context context, @Nullable Typed refused) {
        Visit visit = home.visit(context);
        List<History<Measure>> all = measures.listHistories(visit.id());
        List<Measure> withdrawn = all.stream()
                .filter(history -> !history.holds())
                .map(History::latest)
                .toList();
        Typed typed = refused == null ? fresh(visit.id()) : refused;
        Addresses.status(context, typed);
        Templates.show(
                context,
                new MeasuresPage(
                        home.frame(visit, "Measures, visit " + visit.number()),
                        visit.id(),
                        all.stream()
                                .filter(History::holds)
                                .map(MeasureEntry::of)
                                .toList(),
                        withdrawn,
                        measures.pairs(visit.id()),
                        findAsked(withdrawn, context.queryParam("withdrawn")),
                        fields(typed)));
    }

    private static @Nullable Measure findAsked(List<Measure> withdrawn, @Nullable String id) {
        return withdrawn.stream()
                .filter(measure -> Long.toString(measure.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    /** Measuring goes in rows: the moment and the hand of the measure before, and the air that was typed last today. */
    private Typed fresh(long visitId) {
        Instant midnight = LocalDate.now(clock).atStartOfDay(clock.getZone()).toInstant();
        Air air = roomAir.find(clock.instant(), midnight).orElse(Air.UNKNOWN);
        return measures.listNow(visitId).stream()
                .filter(measure -> !measure.writtenAt().isBefore(midnight))
                .reduce((first, second) -> second)
                .map(last -> MeasureForm.fresh(air, last.moment(), last.hand()))
                .orElseGet(() ->
                        MeasureForm.fresh(air, Moment.BEFORE, settings.get().usualHand()));
    }

    private MeasureFields fields(Typed typed) {
        return new MeasureFields(typed, settings.get().hands());
    }

    private void write(Context context) {
        Visit visit = home.visit(context);
        Typed typed = Typed.from(context);
        Measure measure = MeasureForm.read(typed, visit.id(), now());
        if (typed.sound()) {
            measures.add(measure);
            context.redirect(pageOf(measure) + "#write");
        } else {
            show(context, typed);
        }
    }

    /** What was corrected meanwhile is opened in its latest wording. */
    private void openCorrection(Context context) {
        Measure latest = measures.history(Addresses.id(context, "measure")).latest();
        showCorrection(context, latest, MeasureForm.known(latest));
    }

    private void showCorrection(Context context, Measure measure, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new MeasurePage(
                        home.frame("Correct: " + measure.title(), pageOf(measure), "Measures"),
                        measure,
                        fields(typed)));
    }

    private void correct(Context context) {
        Measure before = measures.get(Addresses.id(context, "measure"));
        Typed typed = Typed.from(context);
        Measure after = MeasureForm.read(typed, before, now());
        if (typed.sound() && measures.correct(after).isEmpty()) {
            typed.note(
                    "quantity",
                    "Somebody else corrected or withdrew this measure while the form was open. Open it in a second tab, bring "
                            + "over what is missing and save there; nothing was overwritten.");
            Basis.show(typed, MeasureForm.known(measures.history(before.id()).latest()));
        }
        if (typed.sound()) {
            context.redirect(pageOf(before));
        } else {
            showCorrection(context, before, typed);
        }
    }

    private void withdraw(Context context) {
        Measure measure = measures.get(Addresses.id(context, "measure"));
        measures.withdraw(measure.id(), now());
        context.redirect(pageOf(measure) + "?withdrawn="
                + measures.history(measure.id()).latest().id());
    }

    private void bringBack(Context context) {
        Measure measure = measures.get(Addresses.id(context, "measure"));
        measures.bringBack(measure.id(), now());
        context.redirect(pageOf(measure));
    }

    private static String pageOf(Measure measure) {
        return "/visits/" + measure.visitId() + "/measures";
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
