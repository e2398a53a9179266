package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The page on which marks are drawn, over a photograph or over our own drawing, and their reading while they are drawn. */
public final class MarkPages implements Room {
    private final VisitHome home;
    private final MarkGrounds grounds;
    private final SettingsStore settings;
    private final FindingStore findings;
    private final MarkStore marks;
    private final MarkBook book;
    private final CardSearches searches;
    private final CardPrintStore prints;
    private final Clock clock;

    public MarkPages(
            VisitHome home,
            MarkGrounds grounds,
            SettingsStore settings,
            FindingStore findings,
            MarkStore marks,
            CardSearches searches,
            CardPrintStore prints,
            Clock clock) {
        this.home = home;
        this.grounds = grounds;
        this.settings = settings;
        this.findings = findings;
        this.marks = marks;
        this.searches = searches;
        this.prints = prints;
        this.clock = clock;
        book = new MarkBook(marks, findings, searches);
    }

    @Override
    public void open(RoutesConfig routes) {
        open(routes, "/photographs/{photograph}/marks", grounds::photograph);
        open(routes, "/visits/{visit}/drawings/{view}", grounds::drawing);
        routes.post("/photographs/{photograph}/card/print", this::measureCard);
        routes.post("/photographs/{photograph}/card/number", this::numberCard);
    }

    private void open(RoutesConfig routes, String address, Function<Context, MarkGround> ground) {
        routes.get(address, context -> show(context, ground.apply(context), null, Typed.empty()));
        routes.post(address, context -> write(context, ground.apply(context)));
        routes.post(
                address + "/reading",
                context -> Templates.show(
                        context, new MarkReadings(searches).of(Typed.from(context), ground.apply(context))));
    }

    private void show(Context context, MarkGround ground, @Nullable Typed refused, Typed cardTyped) {
        Typed typed = refused == null ? begun(context) : refused;
        Photograph photograph = ground.photograph();
        Addresses.status(context, typed.sound() ? cardTyped : typed);
        Templates.show(
                context,
                new MarkingPage(
                        home.frame("Marks: " + ground.title(), ground.backTo(), ground.backWords()),
                        ground,
                        book.list(ground),
                        photograph == null ? null : CardLine.of(photograph, searches.of(photograph)),
                        findWithdrawn(context, ground),
                        new MarkReadings(searches).of(Typed.known(typed.everything()), ground),
                        choices(ground.visitId()),
                        typed,
                        cardTyped,
                        photograph == null ? List.of() : prints.list(),
                        photograph == null
                                ? null
                                : prints.findNumber(photograph.id()).orElse(null),
                        settings.get().hands()));
    }

    /** A fresh form, or one filled with the mark that is to be corrected. */
    private Typed begun(Context context) {
        String corrected = context.queryParam("correct");
        if (corrected != null && corrected.matches("\\d{1,18}")) {
            DrawnMark latest = marks.history(Long.parseLong(corrected)).latest();
            Finding finding = book.entry(latest, grounds.of(latest)).finding();
            return MarkForm.known(latest, finding == null ? "" : Long.toString(finding.id()));
        }
        return MarkForm.fresh(
                context.queryParam("tool"),
                context.queryParam("arch"),
                context.queryParam("finding"),
                settings.get().usualHand());
    }

    private @Nullable DrawnMark findWithdrawn(Context context, MarkGround ground) {
        String asked = context.queryParam("withdrawn");
        return marks.listHistories(ground.visitId()).stream()
                .map(History::latest)
                .filter(DrawnMark::withdrawn)
                .filter(mark -> Long.toString(mark.id()).equals(asked))
                .findFirst()
                .orElse(null);
    }

    private List<Choice> choices(long visitId) {
        return findings.listNow(visitId).stream()
                .map(finding -> new Choice(Long.toString(finding.id()), finding.title()))
                .toList();
    }

    private void write(Context context, MarkGround ground) {
        Typed typed = Typed.from(context);
        Long replaces = typed.whole("replaces", "The mark that is corrected", 1, 999_999_999) == null
                ? null
                : Long.valueOf(typed.raw("replaces").strip());
        Instant now = now();
        DrawnMark mark = MarkForm.read(typed, ground, findings.listNow(ground.visitId()), replaces, now);
        if (typed.sound()) {
            keep(typed, mark.measured(book.measured(mark, ground), replaces, now));
        }
        if (typed.sound()) {
            context.redirect(ground.page() + next(typed));
        } else {
            show(context, ground, typed, Typed.empty());
        }
    }

    private void keep(Typed typed, DrawnMark mark) {
        if (mark.replaces() == null) {
            marks.add(mark);
        } else if (marks.correct(mark).isEmpty()) {
            typed.note(
                    "points",
                    "Somebody else corrected or withdrew this mark while the page was open. Open the page in a second tab and"
                            + " correct it there; nothing was overwritten.");
        }
    }

    /** The next mark is often of the same kind, at the same height, of the same finding. */
    private static String next(Typed typed) {
        return "?tool=" + Addresses.encoded(typed.raw("tool")) + "&arch=" + Addresses.encoded(typed.raw("arch"))
                + "&finding=" + Addresses.encoded(typed.raw("finding"));
    }

    private void measureCard(Context context) {
        PhotographGround ground = grounds.photograph(context);
        Typed typed = Typed.from(context);
        if (CardPrintForm.keep(typed, prints, now())) {
            searches.forgetAll();
            context.redirect(ground.page());
        } else {
            show(context, ground, null, typed);
        }
    }

    /** Which numbered sheet lies in the picture; the picture is looked at again with its check lines. */
    private void numberCard(Context context) {
        PhotographGround ground = grounds.photograph(context);
        Typed typed = Typed.from(context);
        int number = CardPrintForm.number(typed);
        if (typed.sound()) {
            prints.putNumber(ground.photograph().id(), number, now());
            searches.again(ground.photograph());
            context.redirect(ground.page());
        } else {
            show(context, ground, null, typed);
        }
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
