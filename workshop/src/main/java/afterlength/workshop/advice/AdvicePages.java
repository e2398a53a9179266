package afterlength.workshop.advice;

import afterlength.workshop.agreement.AccessStore;
import afterlength.workshop.agreement.AccessStudy;
import afterlength.workshop.agreement.FindingLine;
import afterlength.workshop.agreement.FindingLines;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reasons for and against what could be done about a finding, and the decision. */
public final class AdvicePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final FindingStore findings;
    private final FindingLines lines;
    private final AccessStore studies;
    private final DecisionStore decisions;
    private final Clock clock;

    public AdvicePages(
            Frames frames,
            SettingsStore settings,
            FindingStore findings,
            FindingLines lines,
            AccessStore studies,
            DecisionStore decisions,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.findings = findings;
        this.lines = lines;
        this.studies = studies;
        this.decisions = decisions;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/advice/{finding}", this::openPage);
        routes.post("/visits/{visit}/advice/{finding}", this::decide);
    }

    private void openPage(Context context) {
        FindingLine line = asked(context);
        Map<String, String> known = decisions
                .findNow(line.id())
                .map(now -> Map.of("treatment", now.treatment(), "reason", now.reason(), "hand", usualHand()))
                .orElse(Map.of("hand", usualHand()));
        show(context, line, Typed.known(known));
    }

    private void decide(Context context) {
        FindingLine line = asked(context);
        Typed typed = Typed.from(context);
        Advice advice = advice(line);
        String treatment = typed.raw("treatment");
        if (!advice.offers(treatment)) {
            typed.note(
                    "treatment",
                    treatment.isEmpty()
                            ? "Nothing is chosen; choose one of the ways, to leave it is one of them."
                            : "“" + treatment + "” is none of the ways; choose one of those that stand here.");
        }
        Decision decision = new Decision(
                0,
                Addresses.id(context, "visit"),
                line.id(),
                null,
                treatment,
                Advice.title(treatment),
                typed.required("reason", "The reason", 2000),
                typed.required("hand", "Who decides", 80),
                clock.instant().truncatedTo(ChronoUnit.SECONDS));
        if (typed.sound()) {
            decisions.decide(decision);
            context.redirect("/visits/" + decision.visitId() + "/advice/" + line.id());
        } else {
            show(context, line, typed);
        }
    }

    private void show(Context context, FindingLine line, Typed typed) {
        Addresses.status(context, typed);
        long visit = Addresses.id(context, "visit");
        Templates.show(
                context,
                new AdvicePage(
                        frames.of("What speaks for what").back("/visits/" + visit + "/agreement", "What could be done"),
                        visit,
                        line,
                        advice(line),
                        decisions.listOf(line.id()),
                        typed));
    }

    private Advice advice(FindingLine line) {
        Finding finding = findings.get(line.id());
        return Advice.of(line, Facts.of(finding, study(line)));
    }

    /** A study names the wording that held when it was made. */
    private @Nullable AccessStudy study(FindingLine line) {
        List<Finding> wordings = findings.history(line.id()).entries();
        return wordings.stream()
                .map(wording -> studies.findNow(wording.id()))
                .flatMap(Optional::stream)
                .reduce((first, later) -> later)
                .orElse(null);
    }

    private FindingLine asked(Context context) {
        long id = Addresses.id(context, "finding");
        return lines.listNow(Addresses.id(context, "visit")).stream()
                .filter(line -> line.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("finding", id));
    }

    private String usualHand() {
        return settings.get().usualHand();
    }
}
