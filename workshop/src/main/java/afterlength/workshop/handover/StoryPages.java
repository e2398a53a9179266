package afterlength.workshop.handover;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.PersonWords;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The story of a visit for its owner: chosen on a page, handed out as one file. */
public final class StoryPages implements Room {
    private final Frames frames;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final OwnerStories stories;

    public StoryPages(
            Frames frames, OwnerStore owners, InstrumentStore instruments, VisitStore visits, OwnerStories stories) {
        this.frames = frames;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.stories = stories;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/story", this::choose);
        routes.post("/visits/{visit}/story.html", this::make);
    }

    private void choose(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Instrument instrument = instruments.get(visit.instrumentId());
        Templates.show(
                context,
                new StoryPage(
                        frames.of("The story for the owner").back("/instruments/" + instrument.id(), instrument.name()),
                        visit,
                        stories.offered(visit),
                        Typed.knownAll(Map.of(
                                "words",
                                List.of(String.join("\n", privateWords(instrument, visit))),
                                "picture",
                                stories.offered(visit).stream()
                                        .map(photograph -> Long.toString(photograph.id()))
                                        .toList()))));
    }

    /** The owner's words, and whoever brought the instrument. */
    private Set<String> privateWords(Instrument instrument, Visit visit) {
        Set<String> words = new LinkedHashSet<>(PersonWords.of(owners.get(instrument.ownerId())));
        words.addAll(PersonWords.read(visit.broughtBy()));
        return words;
    }

    private void make(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        Set<Long> chosen = typed.all("picture").stream()
                .filter(id -> id.matches("\\d{1,18}"))
                .map(Long::valueOf)
                .collect(Collectors.toSet());
        context.contentType("text/html; charset=utf-8")
                .header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"story-" + visit.number() + ".html\"")
                .result(stories.html(visit, chosen, PersonWords.read(typed.raw("words")))
                        .getBytes(StandardCharsets.UTF_8));
    }
}
