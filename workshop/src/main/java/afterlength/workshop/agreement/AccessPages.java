package afterlength.workshop.agreement;

import afterlength.craft.access.Clamp;
import afterlength.craft.access.PassageAnswer;
import afterlength.craft.access.PassageRefused;
import afterlength.craft.access.SectionPassage;
import afterlength.craft.geometry.Point;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.FlatSheet;
import afterlength.workshop.examination.TracedMarks;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How a crack is reached: looked at as often as wanted, kept when asked, and put into the proposal. */
public final class AccessPages implements Room {
    private final VisitFrames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final InstrumentStore instruments;
    private final FindingLines findings;
    private final TreatmentStore treatments;
    private final AccessStore studies;
    private final ClampStore clamps;
    private final CleatSheets sheets;
    private final TracedMarks traced;
    private final WaySearches ways;
    private final Clock clock;

    public AccessPages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            InstrumentStore instruments,
            FindingLines findings,
            TreatmentStore treatments,
            AccessStore studies,
            ClampStore clamps,
            CleatSheets sheets,
            TracedMarks traced,
            WaySearches ways,
            Clock clock) {
        this.frames = new VisitFrames(frames);
        this.settings = settings;
        this.visits = visits;
        this.instruments = instruments;
        this.findings = findings;
        this.treatments = treatments;
        this.studies = studies;
        this.clamps = clamps;
        this.sheets = sheets;
        this.traced = traced;
        this.ways = ways;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/access/{finding}", this::openStudy);
        routes.post("/visits/{visit}/access/{finding}", this::answer);
        routes.get("/visits/{visit}/access/{finding}/cleats.pdf", this::sheet);
    }

    private void openStudy(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        FindingLine finding = finding(context, visit);
        Optional<AccessStudy> before = studies.findNow(finding.id());
        Instrument instrument = instruments.get(visit.instrumentId());
        Typed typed = before.map(AccessForm::known)
                .orElseGet(() -> AccessForm.fresh(instrument, settings.get().usualHand()));
        show(
                context,
                visit,
                finding,
                typed,
                before.map(study -> look(typed, study)).orElse(null));
    }

    private FindingLine finding(Context context, Visit visit) {
        long id = Addresses.id(context, "finding");
        return findings.listNow(visit.id()).stream()
                .filter(line -> line.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("finding", id));
    }

    private void answer(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        FindingLine finding = finding(context, visit);
        Typed typed = taken(Typed.from(context), visit);
        Long before = studies.findNow(finding.id()).map(AccessStudy::id).orElse(null);
        AccessStudy study = AccessForm.read(
                typed, finding.id(), before, clamps.list(), clock.instant().truncatedTo(ChronoUnit.SECONDS));
        AccessLook look = typed.sound() ? look(typed, study) : null;
        if (look != null && typed.raw("what").equals("keep")) {
            keep(typed, study, look, visit, finding);
            context.redirect(address(visit, finding) + "?kept=yes");
        } else {
            show(context, visit, finding, typed, look);
        }
    }

    /** With the marks that were chosen, when that was asked for. */
    private Typed taken(Typed typed, Visit visit) {
        return typed.raw("what").equals("take") ? TracedChoice.taken(typed, traced.list(visit.id())) : typed;
    }

    /** Null when the outline or the crack is refused; the problem is noted then. */
    private @Nullable AccessLook look(Typed typed, AccessStudy study) {
        List<Point> hole = TracedPoints.read(typed, "outline", "The edge of the hole", 3);
        List<Point> crack = TracedPoints.read(typed, "crack", "The crack", 2);
        if (!typed.sound()) {
            return null;
        }
        if (crack.stream().distinct().count() < 2) {
            typed.note("crack", "The crack has no length: all its points are the same. Write its two ends at least.");
            return null;
        }
        Clamp clamp = study.clampId() == null
                ? null
                : clamps.find(study.clampId()).map(ShopClamp::measures).orElse(null);
        PassageAnswer answer = AccessLook.passage(study, hole, clamp);
        if (answer instanceof SectionPassage passage) {
            List<Clamp> all = clamps.list().stream().map(ShopClamp::measures).toList();
            return AccessLook.of(study, passage, crack, clamp, all);
        }
        ((PassageRefused) answer)
                .problems().stream().map(Problem::message).forEach(text -> typed.note("outline", text));
        return null;
    }

    private void sheet(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        FindingLine finding = finding(context, visit);
        AccessStudy study = studies.findNow(finding.id())
                .orElseThrow(() -> new NotHere("kept study of access for finding", finding.id()));
        AccessLook look = look(AccessForm.known(study), study);
        if (look == null || look.row().cleats().isEmpty()) {
            throw new NotHere("cleat to draw for finding", finding.id());
        }
        String name = instruments.get(visit.instrumentId()).name() + ", visit " + visit.number();
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"cleats-" + finding.id() + ".pdf\"")
                .result(sheets.pdf(look, name));
    }

    private void keep(Typed typed, AccessStudy study, AccessLook look, Visit visit, FindingLine finding) {
        studies.add(study);
        if (typed.ticked("propose", "yes")) {
            AccessProposal.record(treatments, look, visit.id(), finding.id());
        }
    }

    private void show(Context context, Visit visit, FindingLine finding, Typed typed, @Nullable AccessLook look) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new AccessPage(
                        frames.inside(visit.id(), "Access to the crack"),
                        address(visit, finding),
                        AgreementWords.capital(finding.words()),
                        typed,
                        clamps.list(),
                        studies.findNow(finding.id()).isPresent(),
                        context.queryParam("kept") != null,
                        look,
                        look == null ? null : ways.of(look).map(WayPart::new).orElse(null),
                        traced.list(visit.id()),
                        traced.isWorking(visit.id()),
                        look == null ? null : findSheet(look.study().inside())));
    }

    private @Nullable FlatSheet findSheet(Inside inside) {
        Long photograph = inside.photographId();
        return photograph == null
                ? null
                : traced.findSheet(photograph, inside.photographHeightMm()).orElse(null);
    }

    private static String address(Visit visit, FindingLine finding) {
        return "/visits/" + visit.id() + "/access/" + finding.id();
    }
}
