package afterlength.workshop.retouch;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.DecimalText;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The retouch of a visit: a loss is measured, a recipe chosen, a coat laid, measured again and topped up. */
public final class RetouchPages implements Room {
    private static final double USUAL_MIX_G = 1;

    private final Frames frames;
    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final FindingStore findings;
    private final PaletteStore palette;
    private final RetouchStore retouches;
    private final CoatStore coats;
    private final CaseDesk cases;
    private final Clock clock;

    public RetouchPages(
            Frames frames,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            FindingStore findings,
            PaletteStore palette,
            RetouchStore retouches,
            CoatStore coats,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.instruments = instruments;
        this.visits = visits;
        this.findings = findings;
        this.palette = palette;
        this.retouches = retouches;
        this.coats = coats;
        this.cases = new CaseDesk(retouches, palette, coats);
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/retouch/new", context -> showNew(context, visit(context), offered()));
        routes.post("/visits/{visit}/retouch/new", this::add);
        routes.get("/visits/{visit}/retouch/{retouch}", context -> show(context, one(context), handOnly()));
        routes.post("/visits/{visit}/retouch/{retouch}/withdraw", this::withdraw);
        routes.get("/visits/{visit}/retouch/{retouch}/coat", this::openCoat);
        routes.post("/visits/{visit}/retouch/{retouch}/coat", this::lay);
        routes.post("/visits/{visit}/retouch/{retouch}/reading", this::measure);
    }

    private void add(Context context) {
        Visit visit = visit(context);
        Typed typed = Typed.from(context);
        RetouchForm.Read read =
                RetouchForm.read(typed, visit.id(), findings.listNow(visit.id()), palette.list(), now());
        if (read == null) {
            showNew(context, visit, typed);
        } else {
            context.redirect(address(visit.id(), retouches.add(read.retouch(), read.colours())));
        }
    }

    private void withdraw(Context context) {
        Retouch retouch = one(context).retouch();
        retouches.withdraw(retouch.id(), now());
        context.redirect("/instruments/" + visit(context).instrumentId());
    }

    private void openCoat(Context context) {
        RetouchCase one = one(context);
        String recipe = Optional.ofNullable(context.queryParam("recipe")).orElse("");
        Optional<Mix> mix = cases.find(one, recipe);
        Map<String, String> offered = mix.map(
                        known -> CoatForm.offered(one, known, settings.get().usualHand()))
                .orElse(Map.of());
        showCoat(context, one, recipe, mix, Typed.known(offered));
    }

    private void lay(Context context) {
        RetouchCase one = one(context);
        Typed typed = Typed.from(context);
        String recipe = typed.raw("recipe");
        Optional<Mix> mix = cases.find(one, recipe);
        CoatToLay coat = CoatForm.read(typed, one, mix, now());
        if (coat == null) {
            showCoat(context, one, recipe, mix, typed);
        } else {
            coats.lay(one.retouch().visitId(), coat, now());
            context.redirect(address(one.retouch().visitId(), one.retouch().id()));
        }
    }

    private void measure(Context context) {
        RetouchCase one = one(context);
        Typed typed = Typed.from(context);
        ColourReading reading = ColourForm.read(typed, "seen", "The place");
        String hand = typed.required("hand", "Whose hands", 60);
        if (!one.begun()) {
            typed.note("seen_l", "No coat is laid yet, so there is nothing to measure again. Lay one first.");
        }
        if (typed.sound() && reading != null) {
            coats.measured(one.lastCoat().id(), reading, hand, now());
            context.redirect(address(one.retouch().visitId(), one.retouch().id()));
        } else {
            show(context, one, typed);
        }
    }

    private void show(Context context, RetouchCase one, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = home(visit(context), "Retouch: " + one.retouch().place());
        Long findingId = one.retouch().findingId();
        String finding = findingId == null
                ? null
                : findings.findNow(findingId).map(Finding::title).orElse(null);
        Templates.show(context, new RetouchPage(frame, one, cases.recipes(one), typed, finding, grams(context)));
    }

    private void showNew(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        List<Finding> seen = findings.listNow(visit.id());
        Templates.show(
                context,
                new NewRetouchPage(home(visit, "A loss to be retouched"), visit.id(), seen, palette.list(), typed));
    }

    private void showCoat(Context context, RetouchCase one, String recipe, Optional<Mix> mix, Typed typed) {
        if (mix.isEmpty() && typed.sound()) {
            throw new NotHere("recipe", recipe);
        }
        Addresses.status(context, typed);
        Frame frame = frames.of(one.begun() ? "The next coat" : "The first coat")
                .back(
                        address(one.retouch().visitId(), one.retouch().id()),
                        one.retouch().place());
        Templates.show(context, new CoatPage(frame, one, recipe, mix, typed));
    }

    private Typed offered() {
        Map<String, List<String>> known = new LinkedHashMap<>();
        known.put("colorants", List.of("3"));
        known.put("film_coats", List.of(RetouchForm.USUAL_FILM_COATS));
        known.put("hand", List.of(settings.get().usualHand()));
        known.put(
                "colours",
                palette.list().stream().map(one -> Long.toString(one.id())).toList());
        return Typed.knownAll(known);
    }

    private Typed handOnly() {
        return Typed.known(Map.of("hand", settings.get().usualHand()));
    }

    /** What is no amount is taken for one gram. */
    private static double grams(Context context) {
        double typed_g = DecimalText.read(
                        Optional.ofNullable(context.queryParam("grams")).orElse(""))
                .orElse(USUAL_MIX_G);
        return typed_g > 0 && typed_g <= 1000 ? typed_g : USUAL_MIX_G;
    }

    private RetouchCase one(Context context) {
        RetouchCase one = cases.get(Addresses.id(context, "retouch"));
        if (one.retouch().visitId() != visit(context).id()) {
            throw new NotHere("retouch", one.retouch().id());
        }
        return one;
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }

    private Frame home(Visit visit, String title) {
        Instrument instrument = instruments.get(visit.instrumentId());
        return frames.of(title).back("/instruments/" + instrument.id(), instrument.name());
    }

    private static String address(long visitId, long retouchId) {
        return "/visits/" + visitId + "/retouch/" + retouchId;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
