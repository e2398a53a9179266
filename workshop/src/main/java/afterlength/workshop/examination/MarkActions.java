package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** What can be done with a mark that is kept: withdrawn and brought back, measured again, its size taken into its finding. */
public final class MarkActions implements Room {
    private final MarkGrounds grounds;
    private final MarkStore marks;
    private final FindingStore findings;
    private final MarkBook book;
    private final Clock clock;

    public MarkActions(
            MarkGrounds grounds, MarkStore marks, FindingStore findings, CardSearches searches, Clock clock) {
        this.grounds = grounds;
        this.marks = marks;
        this.findings = findings;
        this.clock = clock;
        book = new MarkBook(marks, findings, searches);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.post("/marks/{mark}/withdraw", this::withdraw);
        routes.post("/marks/{mark}/bring-back", this::bringBack);
        routes.post("/marks/{mark}/measure", this::measure);
        routes.post("/marks/{mark}/take-over", this::takeOver);
    }

    private void withdraw(Context context) {
        DrawnMark mark = latest(context);
        marks.withdraw(mark.id(), now());
        context.redirect(grounds.of(mark).page() + "?withdrawn="
                + marks.history(mark.id()).latest().id());
    }

    private void bringBack(Context context) {
        DrawnMark mark = latest(context);
        marks.bringBack(mark.id(), now());
        context.redirect(grounds.of(mark).page());
    }

    /** Keeps what the mark measures now with it. */
    private void measure(Context context) {
        DrawnMark mark = latest(context);
        MarkGround ground = grounds.of(mark);
        MarkSize size = book.measured(mark, ground);
        if (size.known()) {
            marks.correct(mark.measured(size, mark.id(), now()));
        }
        context.redirect(ground.page());
    }

    /** Corrects the finding by the size of the mark; the picture counts as one on which it is seen. */
    private void takeOver(Context context) {
        DrawnMark mark = latest(context);
        MarkGround ground = grounds.of(mark);
        MarkEntry entry = book.entry(mark, ground);
        Finding finding = entry.finding();
        if (finding != null && entry.offersTakingOver()) {
            MarkSize size = entry.size().rounded();
            findings.correct(finding.sized(size.size_mm(), size.plusMinus_mm(), now()), seenOn(finding, mark));
        }
        context.redirect(ground.page());
    }

    private List<Long> seenOn(Finding finding, DrawnMark mark) {
        List<Long> seenOn =
                new ArrayList<>(findings.photographs(finding.visitId()).getOrDefault(finding.id(), List.of()));
        Long photograph = mark.photographId();
        if (photograph != null && !seenOn.contains(photograph)) {
            seenOn.add(photograph);
        }
        return seenOn;
    }

    private DrawnMark latest(Context context) {
        return marks.history(Addresses.id(context, "mark")).latest();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
