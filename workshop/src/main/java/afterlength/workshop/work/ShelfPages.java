package afterlength.workshop.work;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** The shelf: the shop's settings, its materials, its practice times. */
final class ShelfPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final MaterialStore materials;

    ShelfPages(Frames frames, SettingsStore settings, MaterialStore materials) {
        this.frames = frames;
        this.settings = settings;
        this.materials = materials;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf", this::show);
        routes.get("/shelf/settings", this::openSettings);
        routes.post("/shelf/settings", this::changeSettings);
        routes.get("/shelf/materials/new", context -> showMaterial(context, 0, Typed.empty()));
        routes.post("/shelf/materials/new", this::addMaterial);
        routes.get("/shelf/materials/{material}", context -> {
            Material material = material(context);
            showMaterial(context, material.id(), Typed.known(MaterialForm.typedOf(material)));
        });
        routes.post("/shelf/materials/{material}", this::changeMaterial);
        routes.post("/shelf/materials/{material}/put-away", context -> {
            materials.putAway(material(context).id());
            context.redirect("/shelf?away=" + material(context).id());
        });
        routes.post("/shelf/materials/{material}/take-back", context -> {
            materials.takeBack(material(context).id());
            context.redirect("/shelf#materials");
        });
    }

    private void show(Context context) {
        Templates.show(
                context,
                new ShelfPage(
                        frames.at(Frame.Place.SHELF, "Shelf"),
                        settings.get(),
                        materials.list(),
                        materials.listPutAway(),
                        justPutAway(context).orElse(null)));
    }

    private Optional<Notice> justPutAway(Context context) {
        String id = context.queryParam("away");
        return materials.listPutAway().stream()
                .filter(material -> Long.toString(material.id()).equals(id))
                .map(material -> new Notice(
                        "Put away: " + material.words() + ". What the diary says of it stays.",
                        "/shelf/materials/" + material.id() + "/take-back",
                        "Take it back",
                        null))
                .findFirst();
    }

    private void openSettings(Context context) {
        Map<String, String> stored = SettingsForm.typedOf(settings.get());
        showSettings(context, Typed.known(Basis.with(stored, stored)));
    }

    private synchronized void changeSettings(Context context) {
        Typed typed = Typed.from(context);
        Settings before = settings.get();
        Settings read = SettingsForm.read(typed, before);
        Basis.check(typed, SettingsForm.typedOf(before));
        if (typed.sound()) {
            settings.put(read);
            context.redirect("/shelf");
        } else {
            showSettings(context, typed);
        }
    }

    private void addMaterial(Context context) {
        Typed typed = Typed.from(context);
        Material read = MaterialForm.read(typed, 0, 1);
        if (typed.sound()) {
            materials.add(read);
            context.redirect("/shelf#materials");
        } else {
            showMaterial(context, 0, typed);
        }
    }

    private void changeMaterial(Context context) {
        Material before = material(context);
        Typed typed = Typed.from(context);
        Material read = MaterialForm.read(typed, before.id(), Addresses.version(typed));
        if (typed.sound() && !materials.change(read)) {
            Addresses.noteChangedMeanwhile(typed, MaterialForm.typedOf(before));
        }
        if (typed.sound()) {
            context.redirect("/shelf#materials");
        } else {
            showMaterial(context, before.id(), typed);
        }
    }

    private void showSettings(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(context, new SettingsPage(inShelf("The shop's settings"), typed));
    }

    private void showMaterial(Context context, long id, Typed typed) {
        Addresses.status(context, typed);
        String address = "/shelf/materials/" + (id == 0 ? "new" : Long.toString(id));
        Templates.show(
                context,
                new MaterialPage(inShelf(id == 0 ? "A material for the shelf" : "Change a material"), address, typed));
    }

    private Frame inShelf(String title) {
        return frames.at(Frame.Place.SHELF, title).back("/shelf", "Shelf");
    }

    private Material material(Context context) {
        return materials.get(Addresses.id(context, "material"));
    }
}
