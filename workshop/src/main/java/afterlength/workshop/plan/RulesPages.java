package afterlength.workshop.plan;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** Hours, glue, clamps and cupboard, on the shelf. */
final class RulesPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final BenchRulesStore rules;

    RulesPages(Frames frames, SettingsStore settings, BenchRulesStore rules) {
        this.frames = frames;
        this.settings = settings;
        this.rules = rules;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/bench", context -> show(context, Typed.known(RulesForm.typedOf(rules.get(), hands()))));
        routes.post("/shelf/bench", this::change);
    }

    private void change(Context context) {
        Typed typed = Typed.from(context);
        BenchRules read = RulesForm.read(typed, hands());
        if (read == null) {
            show(context, typed);
        } else {
            rules.put(read);
            context.redirect("/plan");
        }
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.at(Frame.Place.SHELF, "Hours, clamps and cupboard").back("/shelf", "Shelf");
        Templates.show(context, new RulesPage(frame, hands(), typed));
    }

    private List<String> hands() {
        return settings.get().hands();
    }
}
