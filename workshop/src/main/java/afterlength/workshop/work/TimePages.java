package afterlength.workshop.work;

import afterlength.craft.estimate.HandsOn;
import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.agreement.PracticeTime;
import afterlength.workshop.agreement.PracticeTimes;
import afterlength.workshop.agreement.TemplateStep;
import afterlength.workshop.agreement.TreatmentTemplate;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.agreement.Wait;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;

/** Practice times on the shelf: those of the tables, and the shop's own over them. */
final class TimePages implements Room {
    private static final int LONGEST_HANDS_MIN = 6000;
    private static final double LONGEST_WAIT_H = 10_000;

    private final Frames frames;
    private final SettingsStore settings;
    private final PracticeStore practice;
    private final Clock clock;

    TimePages(Frames frames, SettingsStore settings, PracticeStore practice, Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.practice = practice;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/shelf/times",
                context -> Templates.show(
                        context,
                        TimesPage.of(
                                frames.at(Frame.Place.SHELF, "Practice times").back("/shelf", "Shelf"),
                                practice.get())));
        routes.get("/shelf/times/{template}/{step}", context -> show(context, known(context)));
        routes.post("/shelf/times/{template}/{step}", this::keep);
        routes.post("/shelf/times/{template}/{step}/take-back", context -> {
            practice.get().find(template(context), step(context)).ifPresent(practice::withdraw);
            context.redirect("/shelf/times");
        });
    }

    private void keep(Context context) {
        Typed typed = Typed.from(context);
        double[] hands = StepForm.three(typed, "hands", "The hands-on time", "min", LONGEST_HANDS_MIN);
        double[] wait = StepForm.three(typed, "wait", "The wait", "h", LONGEST_WAIT_H);
        if (!typed.sound()) {
            show(context, typed);
            return;
        }
        practice.put(new PracticeTime(
                template(context).key(),
                step(context).name(),
                new HandsOn(hands[0], hands[1], hands[2]),
                new Wait(wait[0], wait[1], wait[2]),
                settings.get().usualHand(),
                clock.instant()));
        context.redirect("/shelf/times");
    }

    private Typed known(Context context) {
        PracticeTimes own = practice.get();
        TemplateStep step = own.of(template(context)).steps().get(number(context));
        Map<String, String> typed = new HashMap<>();
        typed.put("hands_low", Figures.typed(step.handsOn().low_min()));
        typed.put("hands_typical", Figures.typed(step.handsOn().typical_min()));
        typed.put("hands_high", Figures.typed(step.handsOn().high_min()));
        typed.put("wait_low", Figures.typed(step.waiting().low_h()));
        typed.put("wait_typical", Figures.typed(step.waiting().typical_h()));
        typed.put("wait_high", Figures.typed(step.waiting().high_h()));
        return Typed.known(typed);
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        TreatmentTemplate template = template(context);
        TemplateStep step = step(context);
        Frame frame = frames.at(Frame.Place.SHELF, template.title()).back("/shelf/times", "Practice times");
        boolean own = practice.get().find(template, step).isPresent();
        Templates.show(
                context,
                new TimePage(
                        frame,
                        "/shelf/times/" + template.key() + "/" + (number(context) + 1),
                        step.name(),
                        TimesPage.words(step),
                        own,
                        typed));
    }

    private static TreatmentTemplate template(Context context) {
        String key = context.pathParam("template");
        return TreatmentTemplates.find(key).orElseThrow(() -> new NotHere("treatment", key));
    }

    /** As the tables have it. */
    private static TemplateStep step(Context context) {
        return template(context).steps().get(number(context));
    }

    private static int number(Context context) {
        long number = Addresses.id(context, "step");
        if (number < 1 || number > template(context).steps().size()) {
            throw new NotHere("step", number);
        }
        return (int) number - 1;
    }
}
