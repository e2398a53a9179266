package afterlength.start.demo;

import static afterlength.workshop.examination.Answer.NO;
import static afterlength.workshop.examination.Answer.UNKNOWN;
import static afterlength.workshop.examination.Answer.YES;
import static afterlength.workshop.examination.FindingAge.FRESH;
import static afterlength.workshop.examination.FindingAge.OLD;

import afterlength.start.demo.DemoVisit.Seen;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Quantity;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.Writing;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Seven other instruments in the house, each at another stage. All invented. */
final class OtherCases {
    private final DemoStores stores;
    private final DemoShop.DemoShelf shelf;
    private final Instant now;
    private final LocalDate today;

    OtherCases(DemoStores stores, DemoShop.DemoShelf shelf, Instant now) {
        this.stores = stores;
        this.shelf = shelf;
        this.now = now;
        today = LocalDate.ofInstant(now, stores.clock().getZone());
    }

    void tell() throws IOException {
        paleViolinBetweenCoats();
        celloInClamps();
        orchestraViolaIsAgreed();
        bassViolinIsAgreed();
        redViolinAwaitsAnAnswer();
        darkViolinIsExamined();
        smallViolinHasJustCome();
    }

    /** In work: the first coat is drying. */
    private void paleViolinBetweenCoats() throws IOException {
        DemoVisit story = receive(
                19,
                "Anselm Rieke (invented)",
                InstrumentKind.VIOLIN,
                "Violin, pale varnish, 1980s",
                "Tomas Lindqvist",
                "Chipped varnish at the lower edge after a fall of the music stand.",
                "Should not catch the eye on stage.");
        long front = story.picture(DemoPicture.PALE_VIOLIN_FRONT, Moment.BEFORE);
        long chip = story.finding(
                new Seen(
                        "varnish",
                        "chipped varnish",
                        "lower bass edge",
                        12.0,
                        1,
                        "",
                        FRESH,
                        NO,
                        NO,
                        "Three chips down to the ground, the largest 12 by 4 mm, edges sharp.",
                        ""),
                front);
        stores.clock().set(today.minusDays(15), 14, 0);
        story.offer("fill", List.of(chip));
        story.offer("retouch-spirit", List.of(chip));
        story.agree("Anselm Rieke (invented)", Means.TELEPHONE, weekday(15), "");
        live(story, 3, now.minus(Duration.ofHours(2)));
    }

    /** In work: glued this morning, in clamps until tomorrow. */
    private void celloInClamps() throws IOException {
        DemoVisit story = receive(
                12,
                "Music school Lower Aldern (invented)",
                InstrumentKind.CELLO,
                "School cello, 1960s",
                "Ines Marbach",
                "Buzzes on the D string; a seam is open.",
                "Back for the autumn concert.");
        long front = story.picture(DemoPicture.CELLO_FRONT, Moment.BEFORE);
        long seam = story.finding(
                new Seen(
                        "back",
                        "open seam (back)",
                        "upper bout, bass side",
                        140.0,
                        2,
                        "",
                        FRESH,
                        YES,
                        YES,
                        "A card passes over this length; clean joint.",
                        "Opened in the heating season."),
                front);
        long board = story.finding(new Seen(
                "fingerboard",
                "board grooved",
                "under A and D, first position",
                0.4,
                0.1,
                "",
                OLD,
                NO,
                YES,
                "Grooves 0.4 mm deep under the A string.",
                ""));
        story.measure(Moment.BEFORE, Quantity.SPEAKING_LENGTH, 691, 1, 20, 38);
        stores.clock().set(today.minusDays(9), 11, 30);
        story.offer("seam", List.of(seam));
        story.offer("board-planed", List.of(board));
        story.offer("strings-on", List.of());
        story.agree("Music school Lower Aldern (invented)", Means.E_MAIL, weekday(7), "Invoice to the school.");
        live(story, 2, now.minus(Duration.ofHours(3)));
    }

    /** Agreed, and planned between the others; nobody has begun. */
    private void orchestraViolaIsAgreed() throws IOException {
        DemoVisit story = receive(
                8,
                "Ruta Kalnins (invented)",
                InstrumentKind.VIOLA,
                "Viola, 1970s, from an orchestra",
                "Ines Marbach",
                "The A string cuts into the nut; two pegs slip.",
                "Before the tour.");
        long nut = story.finding(new Seen(
                "nut",
                "nut grooves too low or deep",
                "A string",
                0.1,
                0.05,
                "",
                OLD,
                YES,
                YES,
                "The A string touches the board when it swings.",
                ""));
        stores.clock().set(today.minusDays(6), 12, 0);
        story.offer("nut-new", List.of(nut));
        story.offer("pegs-new", List.of());
        story.offer("post", List.of());
        story.offer("strings-on", List.of());
        story.agree("Ruta Kalnins (invented)", Means.IN_PERSON, weekday(11), "");
    }

    /** Agreed, much work, and not promised for soon. */
    private void bassViolinIsAgreed() throws IOException {
        DemoVisit story = receive(
                11,
                "Jonas Thielemann (invented)",
                InstrumentKind.VIOLIN,
                "Violin, blond, about 1910",
                "Tomas Lindqvist",
                "Dull on the G string; a light tap tells of a loose bar.",
                "No hurry, but well done.");
        long bar = story.finding(new Seen(
                "bass bar",
                "loose bass bar",
                "lower end",
                35.0,
                5,
                "",
                OLD,
                YES,
                YES,
                "A tapping tool clicks over the lower 35 mm of the bar.",
                "Seen with a mirror; the glue line is open."));
        stores.clock().set(today.minusDays(5), 16, 0);
        story.offer("top-off", List.of(bar));
        story.offer("bass-bar", List.of(bar));
        story.offer("top-on", List.of(bar));
        story.offer("post", List.of());
        story.offer("strings-on", List.of());
        story.agree("Jonas Thielemann (invented)", Means.IN_PERSON, weekday(25), "");
    }

    /** So many days from today, or the Monday after when that is a weekend. */
    private LocalDate weekday(int days) {
        LocalDate day = today.plusDays(days);
        return switch (day.getDayOfWeek()) {
            case SATURDAY -> day.plusDays(2);
            case SUNDAY -> day.plusDays(1);
            default -> day;
        };
    }

    /** Waits for its owner. */
    private void redViolinAwaitsAnAnswer() throws IOException {
        DemoVisit story = receive(
                9,
                "Pauline Vandersteen (invented)",
                InstrumentKind.VIOLIN,
                "Violin, red varnish, about 1930",
                "Ines Marbach",
                "Neck angle low, strings hard to press.",
                "What would it cost to make it easy to play?");
        long front = story.picture(DemoPicture.RED_VIOLIN_FRONT, Moment.BEFORE);
        long drop = story.finding(
                new Seen(
                        "neck",
                        "neck drop (low projection)",
                        "at the bridge place",
                        24.4,
                        0.3,
                        "",
                        OLD,
                        YES,
                        UNKNOWN,
                        "The straight-edge along the board meets the bridge 24.4 mm over the top.",
                        ""),
                front);
        long nut = story.finding(new Seen(
                "nut",
                "nut too high",
                "all strings",
                0.9,
                0.1,
                "",
                OLD,
                YES,
                NO,
                "Strings stand 0.9 to 1.0 mm over the board at the nut.",
                ""));
        story.measure(Moment.BEFORE, Quantity.PROJECTION, 24.4, 0.3, 20, 40);
        stores.clock().set(today.minusDays(4), 10, 0);
        story.offer("nut-new", List.of(nut));
        story.offer("neck-reset", List.of(drop));
        story.offer("bridge-new", List.of(drop));
        story.offer("strings-on", List.of());
        story.offer("report", List.of());
    }

    /** Examined; the proposal is still to be written. */
    private void darkViolinIsExamined() throws IOException {
        DemoVisit story = receive(
                6,
                "Emeric Soltan (invented)",
                InstrumentKind.VIOLIN,
                "Violin, dark, without label",
                "Tomas Lindqvist",
                "Found in an estate; is it worth playing?",
                "To know what is there.");
        long front = story.picture(DemoPicture.DARK_VIOLIN_FRONT, Moment.BEFORE);
        story.finding(
                new Seen(
                        "top",
                        "saddle crack",
                        "bass end of the saddle, up the grain",
                        46.0,
                        1,
                        "",
                        OLD,
                        UNKNOWN,
                        YES,
                        "Crack open by about 0.1 mm, dirt throughout.",
                        "Saddle fitted without room at its ends."),
                front);
        story.finding(new Seen(
                "varnish",
                "later overcoat or polish",
                "whole top",
                null,
                0,
                "over the whole surface",
                OLD,
                NO,
                NO,
                "Glossy layer over dirt; differs under ultraviolet.",
                ""));
        story.finding(new Seen(
                "whole",
                "old wood-borer channels",
                "lower rib, treble side",
                18.0,
                1,
                "",
                OLD,
                NO,
                UNKNOWN,
                "Two flight holes, dark inside; no fresh dust after five days in a bag.",
                ""));
        story.measure(Moment.BEFORE, Quantity.BODY_LENGTH, 357, 0.5, 20, 42);
    }

    /** Received yesterday; nothing has been looked at. */
    private void smallViolinHasJustCome() throws IOException {
        DemoVisit story = receive(
                1,
                "Family Brandquist (invented)",
                InstrumentKind.VIOLIN,
                "Three-quarter violin",
                "Tomas Lindqvist",
                "A peg hole is worn; the child cannot tune it.",
                "Ready before the holidays.");
        story.picture(DemoPicture.SMALL_VIOLIN_FRONT, Moment.BEFORE);
    }

    private DemoVisit receive(
            int daysAgo, String owner, InstrumentKind kind, String name, String hand, String reason, String wish) {
        LocalDate day = today.minusDays(daysAgo);
        stores.clock().set(day, 10, 0);
        Visit visit = stores.visits()
                .receive(new Arrival(
                        new Owner(0, owner, "", "", "", "", 1),
                        new Instrument(0, 0, kind, name, "", "", "", "", null, "", "", null, 1),
                        new Visit(0, 0, "", day, "", reason, wish, "", "", null, null, 1)));
        stores.clock().set(day, 15, 0);
        return new DemoVisit(stores, visit, hand);
    }

    /** The first steps were done; the last of them ended at the given time. */
    private void live(DemoVisit story, int done, Instant lastEnded) {
        List<Step> steps = stores.steps().list(story.id());
        for (int n = 0; n < done; n++) {
            Step step = steps.get(n);
            Instant to = n == done - 1 ? lastEnded : lastEnded.minus(Duration.ofDays(2L * (done - 1 - n)));
            Instant from = to.minus(Duration.ofMinutes(step.handsTypicalMin()));
            stores.clock().set(to);
            stores.diary().write(Writing.started(step, from, story.hand()), from);
            Writing end = Writing.done(step, to, step.handsTypicalMin(), story.hand());
            stores.diary().write(step.name().contains("glue, clamp") ? end.with(shelf.glue()) : end, to);
        }
    }
}
