package afterlength.workshop.work;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writing into the diary with all its details, and correcting what stands there. */
final class DiaryPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final StepStore steps;
    private final DiaryStore diary;
    private final MaterialStore materials;
    private final BenchAhead plan;
    private final Clock clock;

    DiaryPages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            StepStore steps,
            DiaryStore diary,
            MaterialStore materials,
            BenchAhead plan,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.visits = visits;
        this.steps = steps;
        this.diary = diary;
        this.materials = materials;
        this.plan = plan;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/diary/new", context -> showNew(context, fresh(context)));
        routes.post("/visits/{visit}/diary/new", this::write);
        routes.get("/diary/{entry}/correct", context -> {
            DiaryEntry entry = entry(context);
            showCorrection(context, entry, Typed.known(DiaryForm.typedOf(entry)));
        });
        routes.post("/diary/{entry}/correct", this::correct);
    }

    private Typed fresh(Context context) {
        return Typed.known(DiaryForm.fresh(
                clock.instant(), Hands.current(context, settings.get().hands())));
    }

    private void write(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Step step = step(context, visit);
        Typed typed = Typed.from(context);
        Writing read = DiaryForm.read(
                typed, visit, step == null ? null : step.id(), what(context, step), materials.list(), clock.instant());
        if (read == null) {
            showNew(context, typed);
        } else {
            DiaryEntry entry = diary.write(step == null ? read : counted(read, step), clock.instant());
            goToWork(context, entry);
        }
    }

    /** Minutes left empty are counted from the start, when there was one. */
    private Writing counted(Writing writing, Step step) {
        if (writing.what() != DiaryEvent.DONE || writing.minutes() != null) {
            return writing;
        }
        StepStatus before = StepStatus.of(step, diary.listNow(step.visitId()), writing.at());
        return writing.withMinutes(HandsOnCount.from(before, writing.at()));
    }

    private void correct(Context context) {
        DiaryEntry before = entry(context);
        Typed typed = Typed.from(context);
        Visit visit = visits.get(before.writing().visitId());
        Writing read = DiaryForm.read(
                typed, visit, before.writing().stepId(), before.writing().what(), materials.list(), clock.instant());
        Optional<DiaryEntry> written =
                read == null ? Optional.empty() : diary.correct(before.id(), read, clock.instant());
        if (read != null && written.isEmpty()) {
            typed.note(
                    "remark",
                    "Somebody else corrected this entry while the form was open. Open the work page, look at what stands "
                            + "there now and correct that; nothing was overwritten.");
        }
        written.ifPresentOrElse(entry -> goToWork(context, entry), () -> showCorrection(context, before, typed));
    }

    private void showNew(Context context, Typed typed) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Step step = step(context, visit);
        DiaryEvent what = what(context, step);
        String address =
                "/visits/" + visit.id() + "/diary/new?what=" + what + (step == null ? "" : "&step=" + step.id());
        String title =
                what == DiaryEvent.NOT_DRY ? "Not ready yet" : what == DiaryEvent.NOTE ? "A note" : "Into the diary";
        show(context, frame(title, visit.id()), address, what, step == null ? "" : step.name(), false, typed);
    }

    private void showCorrection(Context context, DiaryEntry entry, Typed typed) {
        show(
                context,
                frame("Correct the diary", entry.writing().visitId()),
                "/diary/" + entry.id() + "/correct",
                entry.writing().what(),
                entry.stepName(),
                true,
                typed);
    }

    private void show(
            Context context,
            Frame frame,
            String address,
            DiaryEvent what,
            String about,
            boolean correction,
            Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context, new DiaryPage(frame, address, what, about, correction, materials.list(), hands(typed), typed));
    }

    /** Those who work here, and whoever wrote the entry. */
    private List<Choice> hands(Typed typed) {
        return Stream.concat(settings.get().hands().stream(), Stream.of(typed.raw("hand")))
                .filter(hand -> !hand.isEmpty())
                .distinct()
                .map(hand -> new Choice(hand, hand))
                .toList();
    }

    private Frame frame(String title, long visitId) {
        return frames.of(title).back("/visits/" + visitId + "/work", "Work");
    }

    private DiaryEntry entry(Context context) {
        return diary.get(Addresses.id(context, "entry"));
    }

    private @Nullable Step step(Context context, Visit visit) {
        String id = context.queryParam("step");
        if (id == null) {
            return null;
        }
        if (!id.matches("\\d{1,18}") || steps.get(Long.parseLong(id)).visitId() != visit.id()) {
            throw new NotHere("step", id + " of visit " + visit.number());
        }
        return steps.get(Long.parseLong(id));
    }

    /** Without a step only a note can be written. */
    private static DiaryEvent what(Context context, @Nullable Step step) {
        String asked = context.queryParam("what");
        return Arrays.stream(DiaryEvent.values())
                .filter(event -> step != null && event.name().equals(asked))
                .findFirst()
                .orElse(DiaryEvent.NOTE);
    }

    /** A wait that was lengthened moves the plan: what it does to what was promised comes first. */
    private void goToWork(Context context, DiaryEntry entry) {
        context.redirect(
                plan.findPageAfter(entry).orElse("/visits/" + entry.writing().visitId() + "/work?entry=" + entry.id()));
    }
}
