package afterlength.start.demo;

import static afterlength.workshop.examination.Answer.NO;
import static afterlength.workshop.examination.Answer.UNKNOWN;
import static afterlength.workshop.examination.Answer.YES;
import static afterlength.workshop.examination.FindingAge.OLD;

import afterlength.craft.units.Money;
import afterlength.start.demo.DemoVisit.Seen;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.handover.Handover;
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

/** The main case: a viola of about 1905 with a label nobody can read, unplayed since 1974. Owner and story are invented. */
final class ViolaCase {
    private static final String HAND = "Ines Marbach";

    private final DemoStores stores;
    private final DemoShop.DemoShelf shelf;
    private final LocalDate today;

    ViolaCase(DemoStores stores, DemoShop.DemoShelf shelf, Instant now) {
        this.stores = stores;
        this.shelf = shelf;
        today = LocalDate.ofInstant(now, stores.clock().getZone());
    }

    /** The crack line on both its pictures, which are taken from the same place: 31 mm. */
    private static final double[] CRACK_PX = {823, 444, 838, 567, 848, 655, 864, 806, 872, 884};

    /** The bench days end three days before today; everything else is counted from the first of them. */
    Visit tell() throws IOException {
        LocalDate received = today.minusDays(61);
        stores.clock().set(received, 10, 20);
        Visit visit = stores.visits().receive(arrival(received));
        DemoVisit story = new DemoVisit(stores, visit, HAND);
        stores.clock().set(received.plusDays(5), 9, 30);
        List<Long> findings = examine(story);
        stores.clock().set(received.plusDays(7), 15, 0);
        propose(story, findings);
        LocalDate ready = work(visit, received.plusDays(10));
        stores.clock().set(ready, 11, 0);
        ViolaSetUp.keep(stores, story);
        ViolaRetouch.lay(stores, visit, findings.get(1), HAND);
        goHome(story, visit, findings.get(1), ready);
        return stores.visits().get(visit.id());
    }

    private static Arrival arrival(LocalDate received) {
        Owner owner = new Owner(
                0,
                "Hedda Obermoser (invented)",
                "hedda.obermoser@example.org",
                "",
                "Linden Yard 8\nUpper Aldern",
                "Plays the violin; the viola is for her daughter.",
                1);
        Instrument viola = new Instrument(
                0,
                0,
                InstrumentKind.VIOLA,
                "Viola, about 1905",
                "one size only named: 16 inch",
                "Central Europe, about 1905, as told",
                "Printed label, browned; of three lines only “…19.5” can be made out.",
                "One-piece back of slab-cut maple, a knot the size of a lentil near the button; two pin holes in the scroll.",
                402.5,
                "Her grandmother’s brother played it in a spa orchestra until 1974. Since then it lay in its case on top of a wardrobe; "
                        + "nobody loosened the strings. “It should sing again, and it may look its age.”",
                "A photograph of the orchestra, dated 1958 on the back, shows him with a viola; whether it is this one cannot be seen.",
                1974,
                1);
        Visit visit = new Visit(
                0,
                0,
                "",
                received,
                "",
                "Unplayed for half a century; shall be played again by a student.",
                "Playing, sound, and no more new varnish than needed.",
                "Wooden case with a torn lining, a bow without hair, two loose strings, a tin of rosin.",
                "Strings slack but on, bridge leaning to the board, seam open at the lower treble bout. No fresh wood dust, no insects seen.",
                new Money(4_200_00),
                null,
                1);
        return new Arrival(owner, viola, visit);
    }

    private List<Long> examine(DemoVisit story) throws IOException {
        long front = story.picture(DemoPicture.VIOLA_FRONT, Moment.BEFORE);
        story.picture(DemoPicture.VIOLA_BACK, Moment.BEFORE);
        story.picture(DemoPicture.VIOLA_SCROLL, Moment.BEFORE);
        long crack = story.picture(DemoPicture.VIOLA_CRACK, Moment.BEFORE);
        long seam = story.picture(DemoPicture.VIOLA_SEAM, Moment.BEFORE);
        long edge = story.picture(DemoPicture.VIOLA_EDGE, Moment.BEFORE);
        long bridge = story.picture(DemoPicture.VIOLA_BRIDGE, Moment.BEFORE);
        long label = story.picture(DemoPicture.VIOLA_LABEL, Moment.BEFORE);
        ViolaSetUp.measureAsItCame(story);
        List<Long> found = List.of(
                story.finding(
                        new Seen(
                                "top",
                                "open seam (top)",
                                "lower bout, treble side, from the corner block down",
                                84.0,
                                1,
                                "",
                                OLD,
                                YES,
                                YES,
                                "A 0.2 mm feeler passes between top and rib over this length; dust and old glue in the joint.",
                                "The joint has dried out and let go before the plate did."),
                        seam,
                        front),
                story.finding(
                        new Seen(
                                "top",
                                "f-hole eye crack",
                                "treble sound-hole, from the lower eye down the grain",
                                31.0,
                                1,
                                "",
                                OLD,
                                UNKNOWN,
                                YES,
                                "Hairline, level, dirt in its upper third; it opens when the wing is pressed lightly.",
                                "Ends well before the lower block; no structure under it."),
                        crack),
                story.finding(
                        new Seen(
                                "bridge",
                                "bridge too low",
                                "centre line",
                                33.4,
                                0.2,
                                "",
                                OLD,
                                YES,
                                YES,
                                "Leans 4 mm to the board and is bent by about 2 mm; strings stand 3.4 and 2.6 mm over the board end.",
                                "Too low for bowing the inner strings alone."),
                        bridge),
                story.finding(new Seen(
                        "pegs",
                        "slipping peg",
                        "C and A",
                        null,
                        0,
                        "two pegs turn back by themselves",
                        OLD,
                        YES,
                        UNKNOWN,
                        "Shafts shiny, holes round; both pegs turn back at half pitch.",
                        "")),
                story.finding(
                        new Seen(
                                "varnish",
                                "varnish wear to bare wood",
                                "upper treble edge, where the hand shifts",
                                58.0,
                                2,
                                "",
                                OLD,
                                NO,
                                YES,
                                "Bare, greyed wood 58 mm long and up to 9 mm wide; purfling covered.",
                                "Sweat has reached the wood; it should not stay open."),
                        edge),
                story.finding(
                        new Seen(
                                "interior",
                                "label present",
                                "under the bass sound-hole",
                                null,
                                0,
                                "recorded, not measured",
                                OLD,
                                NO,
                                NO,
                                "Browned paper, lower corner loose, print gone but for “…19.5”.",
                                ""),
                        label));
        story.markCrack(crack, found.get(1), CRACK_PX);
        return found;
    }

    private void propose(DemoVisit story, List<Long> findings) {
        ViolaAccess.keep(stores, findings.get(1), story.hand());
        story.offer("seam", List.of(findings.get(0)));
        story.offer("crack-outside", List.of(findings.get(1)));
        story.offer("studs-through-sound-hole", List.of(findings.get(1)));
        story.offer("pegs-eased", List.of(findings.get(3)));
        story.offer("edge-protection", List.of(findings.get(4)));
        story.offer("label-care", List.of(findings.get(5)));
        story.offer("retouch-spirit", List.of(findings.get(1)));
        story.offer("post", List.of());
        story.offer("bridge-new", List.of(findings.get(2)));
        story.offer("strings-on", List.of());
        story.offer("report", List.of());
        Treatment cleaning = story.offer("surface-cleaning", List.of());
        stores.clock().set(today.minusDays(52), 17, 10);
        story.agree(
                "Hedda Obermoser (invented)",
                Means.IN_PERSON,
                today.plusDays(2),
                "No cleaning beyond dust: “the rosin is his”.",
                cleaning);
    }

    private LocalDate work(Visit visit, LocalDate first) {
        List<DemoDays.Lived> lived = DemoDays.lay(stores.steps().list(visit.id()), first);
        for (DemoDays.Lived each : lived) {
            Instant from = each.from().atZone(stores.clock().getZone()).toInstant();
            stores.clock().set(from);
            stores.diary().write(Writing.started(each.step(), from, HAND), from);
            Instant to = from.plus(Duration.ofMinutes(each.step().handsTypicalMin()));
            stores.clock().set(to);
            stores.diary()
                    .write(told(Writing.done(each.step(), to, each.step().handsTypicalMin(), HAND), each.step()), to);
        }
        return lived.isEmpty() ? first : lived.get(lived.size() - 1).to().toLocalDate();
    }

    /** What was used, as far as the step's own words tell it. */
    private Writing told(Writing writing, Step step) {
        String name = step.name();
        if (name.contains("studs one by one")) {
            return writing.with(shelf.spruce())
                    .withRemark("Three lozenges of 9.5 mm, grain turned about 45° to the top, with fresh hide glue.");
        }
        if (name.contains("glue")) {
            return writing.with(shelf.glue());
        }
        if (name.contains("isolating")) {
            return writing.with(shelf.isolation());
        }
        if (name.contains("thin coat") || name.contains("colour match")) {
            return writing.with(shelf.retouch()).withRemark("On the crack line only.");
        }
        return name.contains("pegs") ? writing.with(shelf.pegPaste()) : writing;
    }

    private void goHome(DemoVisit story, Visit visit, long finding, LocalDate ready) throws IOException {
        long crack = story.picture(DemoPicture.VIOLA_CRACK_AFTER, Moment.AFTER);
        story.markCrack(crack, finding, CRACK_PX);
        ViolaRetouch.compare(stores, visit, HAND);
        story.picture(DemoPicture.VIOLA_SEAM_AFTER, Moment.AFTER);
        story.picture(DemoPicture.VIOLA_BRIDGE_AFTER, Moment.AFTER);
        story.picture(DemoPicture.VIOLA_FRONT_AFTER, Moment.AFTER);
        LocalDate home = ready.plusDays(1).isAfter(today) ? today : ready.plusDays(1);
        Instant now = stores.clock().set(home, 16, 30);
        stores.handovers()
                .save(new Handover(
                        0,
                        visit.id(),
                        home,
                        "Hedda Obermoser (invented)",
                        "Rosin between bridge and board, at the owner’s wish.\nThe worn edge keeps its shape; it was covered, not built up.\n"
                                + "The pin holes in the scroll.",
                        """
                        Air of 45 to 50 % relative humidity is usually advised; below 25 % seams and cracks may open.
                        Look once a week from the side whether the bridge stands upright.
                        Change strings one at a time; if all are slack the post may fall.
                        Come back when it buzzes, or when the retouched line looks new.\
                        """,
                        "Old bridge, two old strings, one splinter from the crack in a paper bag.",
                        home.plusYears(1),
                        now,
                        HAND));
        ViolaPapers.finish(stores, visit, home, HAND);
    }
}
