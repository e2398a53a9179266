package afterlength.workshop.work;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** The work on one visit: its steps in order, and its diary. */
final class WorkPages implements Room {
    private final Frames frames;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final StepStore steps;
    private final DiaryStore diary;
    private final TreatmentTitles titles;
    private final Clock clock;

    WorkPages(
            Frames frames,
            Ledger ledger,
            InstrumentStore instruments,
            VisitStore visits,
            StepStore steps,
            DiaryStore diary,
            Clock clock) {
        this.frames = frames;
        this.instruments = instruments;
        this.visits = visits;
        this.steps = steps;
        this.diary = diary;
        this.titles = new TreatmentTitles(ledger);
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/work", this::show);
        routes.post("/steps/{step}/earlier", context -> {
            steps.moveEarlier(step(context).id());
            backTo(context, "#step-" + step(context).id());
        });
        routes.post("/steps/{step}/later", context -> {
            steps.moveLater(step(context).id());
            backTo(context, "#step-" + step(context).id());
        });
        routes.post("/steps/{step}/drop", context -> {
            steps.drop(step(context).id());
            backTo(context, "?dropped=" + step(context).id());
        });
        routes.post("/steps/{step}/take-back", context -> {
            steps.takeBack(step(context).id());
            backTo(context, "#step-" + step(context).id());
        });
    }

    private void show(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Instrument instrument = instruments.get(visit.instrumentId());
        Frame frame = frames.of("Work, visit " + visit.number())
                .back("/instruments/" + instrument.id() + "#visit-" + visit.id(), instrument.name());
        List<Step> all = steps.list(visit.id());
        List<DiaryEntry> entries = diary.listNow(visit.id());
        Instant now = clock.instant();
        VisitWork work = VisitWork.of(all, entries, now);
        Templates.show(
                context,
                new WorkPage(
                        frame,
                        visit.id(),
                        WorkWords.sentence(work.turn(), now),
                        new Notices(diary, steps, clock).read(context).orElse(null),
                        StepLines.of(work, entries, titles.of(visit.id())),
                        all.stream().filter(Step::dropped).toList(),
                        entries,
                        now));
    }

    private Step step(Context context) {
        return steps.get(Addresses.id(context, "step"));
    }

    private void backTo(Context context, String place) {
        context.redirect("/visits/" + step(context).visitId() + "/work" + place);
    }
}
