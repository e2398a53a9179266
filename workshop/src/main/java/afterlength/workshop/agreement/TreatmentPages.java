package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Adding lines to a proposal, and changing, ordering and putting away what is there. */
public final class TreatmentPages implements Room {
    private final VisitFrames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final FindingLines findings;
    private final TreatmentStore treatments;

    public TreatmentPages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            FindingLines findings,
            TreatmentStore treatments) {
        this.frames = new VisitFrames(frames);
        this.settings = settings;
        this.visits = visits;
        this.findings = findings;
        this.treatments = treatments;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/treatments", this::choose);
        routes.post("/visits/{visit}/treatments", this::addTicked);
        routes.get("/visits/{visit}/treatments/own", context -> showOwnWords(context, null));
        routes.post("/visits/{visit}/treatments/own", this::addOwnWords);
        routes.get("/treatments/{treatment}/edit", context -> showEdit(context, null));
        routes.post("/treatments/{treatment}/edit", this::edit);
        routes.post("/treatments/{treatment}/place", this::place);
    }

    private void choose(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        FindingLine finding = asked(context, visit).orElse(null);
        List<TreatmentTemplate> fitting = finding == null ? List.of() : TreatmentTemplates.listFitting(finding);
        List<TreatmentTemplate> others = TreatmentTemplates.list().stream()
                .filter(template -> !fitting.contains(template))
                .toList();
        String title = finding == null ? "Add a treatment" : "What could be done about it";
        PracticeTimes practice = treatments.practice();
        Templates.show(
                context,
                new ChoosePage(
                        frames.inside(visit.id(), title),
                        visit.id(),
                        finding,
                        fitting.stream().map(practice::of).toList(),
                        others.stream().map(practice::of).toList()));
    }

    /** The finding named in the address, when it holds. */
    private Optional<FindingLine> asked(Context context, Visit visit) {
        String asked = context.queryParam("finding");
        return findings.listNow(visit.id()).stream()
                .filter(finding -> Long.toString(finding.id()).equals(asked))
                .findFirst();
    }

    private void addTicked(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        List<Long> answered = TreatmentForm.findings(typed, findings.listNow(visit.id()));
        PracticeTimes practice = treatments.practice();
        typed.all("template").stream()
                .flatMap(key -> TreatmentTemplates.find(key).stream())
                .map(practice::of)
                .forEach(template -> treatments.add(Treatment.from(template, visit.id()), answered));
        context.redirect(VisitFrames.workbench(visit.id()));
    }

    private void showOwnWords(Context context, @Nullable Typed refused) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        List<String> ticked = asked(context, visit)
                .map(finding -> List.of(Long.toString(finding.id())))
                .orElse(List.of());
        Typed typed = refused == null ? Typed.knownAll(Map.of("finding", ticked)) : refused;
        String address = "/visits/" + visit.id() + "/treatments/own";
        show(context, visit.id(), "A treatment in own words", address, null, typed);
    }

    private void addOwnWords(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        Treatment treatment = TreatmentForm.read(typed, blank(visit.id()), 1);
        if (typed.sound()) {
            treatments.add(treatment, TreatmentForm.findings(typed, findings.listNow(visit.id())));
            context.redirect(VisitFrames.workbench(visit.id()));
        } else {
            showOwnWords(context, typed);
        }
    }

    private static Treatment blank(long visitId) {
        return new Treatment(
                0, visitId, 0, Tier.PLAYING_ORDER, "?", "", "", Undoing.NO, "", "", "", 0, 0, Money.NOTHING, false, 1);
    }

    private void showEdit(Context context, @Nullable Typed refused) {
        Treatment treatment = treatments.get(Addresses.id(context, "treatment"));
        List<Long> answered = treatments.listAnswers(treatment.visitId()).stream()
                .filter(answer -> answer.treatmentId() == treatment.id())
                .map(AnsweredFinding::findingId)
                .toList();
        Typed typed = refused == null ? Typed.knownAll(TreatmentForm.typedOf(treatment, answered)) : refused;
        String address = "/treatments/" + treatment.id() + "/edit";
        TreatmentTemplate template =
                TreatmentTemplates.find(treatment.template()).orElse(null);
        show(context, treatment.visitId(), treatment.title(), address, template, typed);
    }

    private void edit(Context context) {
        Treatment before = treatments.get(Addresses.id(context, "treatment"));
        Typed typed = Typed.from(context);
        Treatment after = TreatmentForm.read(typed, before, Addresses.version(typed));
        List<Long> answered = TreatmentForm.findings(typed, findings.listNow(before.visitId()));
        if (typed.sound() && !treatments.change(after, answered)) {
            Addresses.noteChangedMeanwhile(
                    typed,
                    Typed.knownAll(TreatmentForm.typedOf(before, answered)).everything());
        }
        if (typed.sound()) {
            context.redirect(VisitFrames.workbench(before.visitId()) + "#line-" + before.id());
        } else {
            showEdit(context, typed);
        }
    }

    private void show(
            Context context,
            long visitId,
            String title,
            String address,
            @Nullable TreatmentTemplate template,
            Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new TreatmentPage(
                        frames.inside(visitId, title),
                        address,
                        findings.listNow(visitId),
                        template,
                        settings.get().currency(),
                        typed));
    }

    private void place(Context context) {
        Treatment treatment = treatments.get(Addresses.id(context, "treatment"));
        String workbench = VisitFrames.workbench(treatment.visitId());
        String line = "#line-" + treatment.id();
        switch (Typed.from(context).raw("what")) {
            case "earlier" -> treatments.moveEarlier(treatment.id());
            case "later" -> treatments.moveLater(treatment.id());
            case "back" -> treatments.putAway(treatment.id(), false);
            case "away" -> {
                treatments.putAway(treatment.id(), true);
                line = "?away=" + treatment.id();
            }
            default -> line = "";
        }
        context.redirect(workbench + line);
    }
}
