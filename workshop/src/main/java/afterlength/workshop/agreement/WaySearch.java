package afterlength.workshop.agreement;

import afterlength.craft.access.MotionAnswer;
import afterlength.craft.access.MotionStopped;
import afterlength.craft.access.Watch;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** One search for a way in: how far it is, whether it is still wanted, and how it ended. */
final class WaySearch implements Watch {
    private final long number;
    private final AccessLook look;
    private final CountDownLatch end = new CountDownLatch(1);
    private volatile double share;
    private volatile boolean cancelled;
    private volatile @Nullable MotionAnswer answer;

    WaySearch(long number, AccessLook look) {
        this.number = number;
        this.look = look;
    }

    @Override
    public boolean goesOn(double done) {
        share = done;
        return !cancelled;
    }

    long number() {
        return number;
    }

    AccessLook look() {
        return look;
    }

    /** How much is done, 0 to 1. */
    double share() {
        return share;
    }

    void cancel() {
        cancelled = true;
    }

    void end(@Nullable MotionAnswer how) {
        answer = how;
        end.countDown();
    }

    boolean isWorking() {
        return end.getCount() > 0;
    }

    /** A short search ends while the page is made; then nobody has to wait for it twice. */
    void waitFor(long atMost_ms) {
        try {
            if (!end.await(atMost_ms, TimeUnit.MILLISECONDS)) {
                return;
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether it ended by itself; a stopped one is looked for again when it is asked for. */
    boolean isAnswered() {
        return answer != null && !(answer instanceof MotionStopped);
    }

    /** Nothing while it works, and nothing when it broke off. */
    Optional<MotionAnswer> findAnswer() {
        return Optional.ofNullable(answer);
    }
}
