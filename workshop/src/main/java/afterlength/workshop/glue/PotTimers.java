package afterlength.workshop.glue;

import afterlength.workshop.work.BenchTimer;
import afterlength.workshop.work.BenchTimers;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the glue pot says on Today: when it is soaked, warm, to be used up, and which joints are clamped. */
public final class PotTimers implements BenchTimers {
    private final GlueStore glue;

    public PotTimers(GlueStore glue) {
        this.glue = glue;
    }

    @Override
    public List<BenchTimer> list(Instant now) {
        List<BenchTimer> timers = new ArrayList<>();
        for (Pot pot : glue.list()) {
            Instant due = pot.due();
            if (due != null) {
                String what = pot.batch().name() + " " + pot.stage().words();
                timers.add(new BenchTimer(
                        what,
                        pot.stage().due(),
                        due,
                        "/shelf/glue/" + pot.batch().id(),
                        PotWords.care(pot)));
            }
            pot.gluings().forEach(gluing -> clamped(gluing, now, timers));
        }
        timers.sort(Comparator.comparing(BenchTimer::until));
        return List.copyOf(timers);
    }

    /** A joint leaves Today when its time is over: the steps of a visit say when to look at it. */
    private static void clamped(Gluing gluing, Instant now, List<BenchTimer> timers) {
        Instant until = gluing.clampedUntil();
        if (until != null && until.isAfter(now)) {
            timers.add(new BenchTimer(
                    "clamped: " + gluing.joint(),
                    "Look before you take clamps off",
                    until,
                    "/shelf/glue/" + gluing.batchId(),
                    ""));
        }
    }
}
