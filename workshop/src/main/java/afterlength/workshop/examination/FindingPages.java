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
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The examination workbench: findings written, corrected, withdrawn and brought back. */
public final class FindingPages implements Room {
    private final VisitHome home;
    private final SettingsStore settings;
    private final FindingStore findings;
    private final PhotographStore photographs;
    private final SittingStore sittings;
    private final MarkStore marks;
    private final FindingBook book;
    private final Clock clock;

    public FindingPages(
            VisitHome home,
            SettingsStore settings,
            FindingStore findings,
            PhotographStore photographs,
            SittingStore sittings,
            MarkStore marks,
            Clock clock) {
        this.home = home;
        this.settings = settings;
        this.findings = findings;
        this.photographs = photographs;
        this.sittings = sittings;
        this.marks = marks;
        this.clock = clock;
        book = new FindingBook(findings, photographs);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/examination", context -> show(context, null));
        routes.post("/visits/{visit}/examination", this::write);
        routes.get("/findings/{finding}/correct", this::openCorrection);
        routes.post("/findings/{finding}/correct", this::correct);
        routes.post("/findings/{finding}/withdraw", this::withdraw);
        routes.post("/findings/{finding}/bring-back", this::bringBack);
    }

    private void show(Context context, @Nullable Typed refused) {
        Visit visit = home.visit(context);
        Typed typed = refused == null ? FindingForm.fresh(settings.get().usualHand()) : refused;
        List<FindingEntry> withdrawn = book.listWithdrawn(visit.id());
        Addresses.status(context, typed);
        Templates.show(
                context,
                new ExaminationPage(
                        home.frame(visit, "Findings, visit " + visit.number()),
                        visit.id(),
                        book.listNow(visit.id()),
                        withdrawn,
                        findAsked(withdrawn, context.queryParam("withdrawn")),
                        sittings.listNow(visit.id()),
                        findAskedSitting(visit.id(), context.queryParam("withdrawn-sitting")),
                        fields(visit.id(), typed),
                        new FindingMarks(findings.listHistories(visit.id()), marks.listNow(visit.id()))));
    }

    private static @Nullable Finding findAsked(List<FindingEntry> withdrawn, @Nullable String id) {
        return withdrawn.stream()
                .map(FindingEntry::finding)
                .filter(finding -> Long.toString(finding.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    private @Nullable Sitting findAskedSitting(long visitId, @Nullable String id) {
        return sittings.listHistories(visitId).stream()
                .map(History::latest)
                .filter(Sitting::withdrawn)
                .filter(sitting -> Long.toString(sitting.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    private FindingFields fields(long visitId, Typed typed) {
        return new FindingFields(
                typed, photographs.list(visitId), settings.get().hands());
    }

    private void write(Context context) {
        Visit visit = home.visit(context);
        Typed typed = Typed.from(context);
        Finding finding = FindingForm.read(typed, visit.id(), now());
        if (typed.sound()) {
            long id = findings.add(finding, FindingForm.photographs(typed, photographs.list(visit.id())));
            context.redirect(pageOf(finding) + "#finding-" + id);
        } else {
            show(context, typed);
        }
    }

    /** What was corrected meanwhile is opened in its latest wording. */
    private void openCorrection(Context context) {
        Finding latest = findings.history(Addresses.id(context, "finding")).latest();
        List<Long> seenOn = findings.photographs(latest.visitId()).getOrDefault(latest.id(), List.of());
        showCorrection(context, latest, FindingForm.known(latest, seenOn));
    }

    private void showCorrection(Context context, Finding finding, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new FindingPage(
                        home.frame("Correct: " + finding.title(), pageOf(finding), "Findings"),
                        finding,
                        fields(finding.visitId(), typed)));
    }

    private void correct(Context context) {
        Finding before = findings.get(Addresses.id(context, "finding"));
        Typed typed = Typed.from(context);
        Finding after = FindingForm.read(typed, before, now());
        List<Long> seenOn = FindingForm.photographs(typed, photographs.list(before.visitId()));
        if (typed.sound() && findings.correct(after, seenOn).isEmpty()) {
            typed.note(
                    "part",
                    "Somebody else corrected or withdrew this finding while the form was open. Open it in a second tab, bring "
                            + "over what is missing and save there; nothing was overwritten.");
            Finding latest = findings.history(before.id()).latest();
            List<Long> latestSeenOn = findings.photographs(latest.visitId()).getOrDefault(latest.id(), List.of());
            Basis.show(typed, FindingForm.known(latest, latestSeenOn));
        }
        if (typed.sound()) {
            context.redirect(pageOf(before));
        } else {
            showCorrection(context, before, typed);
        }
    }

    private void withdraw(Context context) {
        Finding finding = findings.get(Addresses.id(context, "finding"));
        findings.withdraw(finding.id(), now());
        Finding latest = findings.history(finding.id()).latest();
        context.redirect(pageOf(finding) + "?withdrawn=" + latest.id());
    }

    private void bringBack(Context context) {
        Finding finding = findings.get(Addresses.id(context, "finding"));
        findings.bringBack(finding.id(), now());
        context.redirect(pageOf(finding));
    }

    private static String pageOf(Finding finding) {
        return "/visits/" + finding.visitId() + "/examination";
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
