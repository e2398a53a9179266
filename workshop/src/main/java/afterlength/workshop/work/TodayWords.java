package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Says what hands should do next, and why. */
final class TodayWords {
    private static final long DAYS_FROM_MIN = 72 * 60;

    private final Today today;

    private TodayWords(Today today) {
        this.today = today;
    }

    static Sentence sentence(Today today) {
        return new TodayWords(today).sentence();
    }

    /** How a step lies in what is left of the day. */
    static String fit(Step step, DayLeft day) {
        String closing = Days.clock(day.closesAt());
        if (day.minutes() == 0 || step.handsTypicalMin() == 0) {
            return StepWords.hands(step);
        }
        return StepWords.hands(step)
                + (day.fits(step)
                        ? "; fits before closing at " + closing
                        : "; more than the " + Figures.duration(day.minutes()) + " left before " + closing);
    }

    static long secondsLeft(Drying drying, Instant now) {
        return Duration.between(now, drying.status().until()).toSeconds();
    }

    static long secondsLeft(BenchTimer timer, Instant now) {
        return Duration.between(now, timer.until()).toSeconds();
    }

    static String left(Drying drying, Instant now) {
        return left(secondsLeft(drying, now));
    }

    static String left(BenchTimer timer, Instant now) {
        return timer.until().isAfter(now) ? left(secondsLeft(timer, now)) : timer.due();
    }

    /** As the page's script counts on: begun minutes, and days when there are many. */
    private static String left(long seconds) {
        long minutes = (seconds + 59) / 60;
        return (minutes >= DAYS_FROM_MIN ? Figures.fixed(minutes / 1440.0, 1) + " days" : Figures.duration(minutes))
                + " left";
    }

    static String promise(HouseVisit visit, LocalDate today) {
        LocalDate promised = visit.promisedOn();
        return promised == null
                ? "No day is promised; received on " + Days.words(visit.receivedOn())
                : "Promised for " + Days.words(promised) + ", " + Days.away(promised, today);
    }

    private Sentence sentence() {
        if (!today.inHand().isEmpty()) {
            return goOn(today.inHand().get(0));
        }
        Optional<Place.Ready> next = today.findNext();
        if (next.isPresent()) {
            return begin(next.get());
        }
        Optional<Place.Resting> resting = today.findFirstFree();
        if (resting.isPresent()) {
            return rest(resting.get());
        }
        return today.atDesk().isEmpty()
                ? new Sentence("No instrument is in the house.", "", "", "")
                : desk(today.atDesk().get(0));
    }

    private Sentence goOn(Place.InHand place) {
        long minutes = Duration.between(place.turn().since(), today.now()).toMinutes();
        return new Sentence(
                "Go on: ",
                place.turn().step().name(),
                " – " + place.visit().instrument() + ".",
                "Begun " + Days.near(place.turn().since(), today.now())
                        + (minutes == 0 ? "; " : ", " + Figures.duration(minutes) + " ago; ")
                        + StepWords.hands(place.turn().step()) + " is usual.");
    }

    private Sentence begin(Place.Ready place) {
        Step step = place.turn().step();
        return new Sentence(
                today.day().minutes() > 0 ? "Next: " : "The shop has closed for today. Next: ",
                step.name(),
                " – " + place.visit().instrument() + ".",
                promise(place.visit(), Days.day(today.now())) + ". Hands: " + fit(step, today.day()) + ".");
    }

    private Sentence rest(Place.Resting place) {
        String then = place.turn()
                .next()
                .map(step -> "Then “" + step.name() + "” can follow on "
                        + place.visit().instrument() + ".")
                .orElse("Then " + place.visit().instrument() + " has had its last wait.");
        String meanwhile = today.atDesk().isEmpty() ? "" : " Meanwhile the desk has work.";
        return new Sentence(
                "Hands are free until ",
                Days.near(place.turn().until(), today.now()),
                ".",
                "Everything on the bench dries or is clamped. " + then + meanwhile);
    }

    private Sentence desk(Place.AtDesk place) {
        return new Sentence(
                "Nothing waits on the bench. ",
                place.job().doing(),
                " – " + place.visit().instrument() + ".",
                promise(place.visit(), Days.day(today.now())) + "; "
                        + place.job().because() + ".");
    }
}
