package afterlength.workshop.privacy;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.PersonWords;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.WordSweep;
import afterlength.workshop.paper.VCard;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is kept about a person: to look at, to hand over, to erase. */
public final class PersonPages implements Room {
    private static final int LONGEST_WORDS = 4000;

    private final Frames frames;
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final Ledger ledger;
    private final Eraser eraser;
    private final Runnable forget;
    private final Clock clock;

    /**
     * Pages over these stores.
     *
     * @param forget lets go of whatever copies of the shop lie ready to be fetched
     */
    public PersonPages(
            Frames frames,
            SettingsStore settings,
            OwnerStore owners,
            Ledger ledger,
            Eraser eraser,
            Runnable forget,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.owners = owners;
        this.ledger = ledger;
        this.eraser = eraser;
        this.forget = forget;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/owners/{owner}/data", context -> show(context, owner(context), offered(owner(context)), null, null));
        routes.post("/owners/{owner}/data", context -> look(context, owner(context), Typed.from(context)));
        routes.post("/owners/{owner}/erase", this::erase);
        routes.get("/owners/{owner}/card.vcf", this::card);
    }

    private Owner owner(Context context) {
        return owners.get(Addresses.id(context, "owner"));
    }

    private Typed offered(Owner owner) {
        return Typed.known(Map.of(
                "words",
                String.join("\n", PersonWords.of(owner)),
                "hand",
                settings.get().usualHand(),
                "backups",
                "yes"));
    }

    private void erase(Context context) {
        Owner owner = owner(context);
        Typed typed = Typed.from(context);
        List<String> words = PersonWords.read(typed.text("words", "The list of words", LONGEST_WORDS));
        String hand = typed.required("hand", "Whose hands", 60);
        if (!typed.raw("sure").strip().equalsIgnoreCase("erase")) {
            typed.note(
                    "sure",
                    "“" + typed.raw("sure").strip()
                            + "” is not the word erase. Write it to go on; nothing was erased.");
        }
        Erased done = typed.sound()
                ? eraser.erase(
                        owner.id(),
                        words,
                        typed.ticked("backups", "yes"),
                        hand,
                        clock.instant().truncatedTo(ChronoUnit.SECONDS))
                : null;
        if (done != null) {
            forget.run();
            show(context, owner(context), typed, List.of(), done);
        } else {
            look(context, owner, typed);
        }
    }

    private void look(Context context, Owner owner, Typed typed) {
        List<String> words = PersonWords.read(typed.raw("words"));
        List<WordSweep.Found> texts = ledger.read(handle -> WordSweep.look(handle, words)).stream()
                .filter(found -> !found.table().equals("owner") || found.row() != owner.id())
                .toList();
        show(context, owner, typed, texts, null);
    }

    private void show(
            Context context, Owner owner, Typed typed, @Nullable List<WordSweep.Found> texts, @Nullable Erased done) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new PersonPage(
                        frames.of("What is kept about a person").back("/instruments", "Instruments"),
                        owner,
                        texts,
                        eraser.backups(),
                        typed,
                        done));
    }

    private void card(Context context) {
        Owner owner = owner(context);
        UUID number = UUID.nameUUIDFromBytes(("owner " + owner.id()).getBytes(StandardCharsets.UTF_8));
        context.contentType(VCard.MEDIA_TYPE)
                .header("Cache-Control", "no-cache")
                .header("Content-Disposition", "attachment; filename=\"owner-" + owner.id() + ".vcf\"")
                .result(VCard.of("urn:uuid:" + number, owner.name(), owner.email(), owner.phone(), owner.address())
                        .getBytes(StandardCharsets.UTF_8));
    }
}
