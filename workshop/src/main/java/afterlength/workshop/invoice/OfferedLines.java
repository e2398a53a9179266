package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.AgreementLine;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.StepStore;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Lays the diary beside the agreement that holds: what could stand on a bill. */
public final class OfferedLines {
    private final AgreementStore agreements;
    private final TreatmentStore treatments;
    private final StepStore steps;
    private final DiaryStore diary;

    public OfferedLines(AgreementStore agreements, TreatmentStore treatments, StepStore steps, DiaryStore diary) {
        this.agreements = agreements;
        this.treatments = treatments;
        this.steps = steps;
        this.diary = diary;
    }

    List<OfferedLine> list(Agreement agreement, List<Billed> bills) {
        List<Step> all = steps.list(agreement.visitId());
        List<DiaryEntry> entries = diary.listNow(agreement.visitId());
        return agreements.listLines(agreement.id()).stream()
                .filter(AgreementLine::accepted)
                .map(line -> offered(agreement, line, all, entries, bills))
                .toList();
    }

    /** Counted minutes that belong to no agreed line, and so to no bill without the owner's word. */
    int minutesBeside(Agreement agreement) {
        Set<Long> agreed = agreements.listLines(agreement.id()).stream()
                .filter(AgreementLine::accepted)
                .map(AgreementLine::treatmentId)
                .collect(Collectors.toSet());
        Set<Long> agreedSteps = steps.list(agreement.visitId()).stream()
                .filter(step -> step.treatmentId() != null && agreed.contains(step.treatmentId()))
                .map(Step::id)
                .collect(Collectors.toSet());
        return minutes(diary.listNow(agreement.visitId()).stream()
                .filter(entry -> !agreedSteps.contains(entry.writing().stepId()))
                .toList());
    }

    private OfferedLine offered(
            Agreement agreement, AgreementLine line, List<Step> all, List<DiaryEntry> entries, List<Billed> bills) {
        Set<Long> own = all.stream()
                .filter(step -> step.treatmentId() != null && step.treatmentId() == line.treatmentId())
                .map(Step::id)
                .collect(Collectors.toSet());
        List<DiaryEntry> told = entries.stream()
                .filter(entry -> own.contains(entry.writing().stepId()))
                .toList();
        int minutes = minutes(told);
        boolean done = own.isEmpty()
                || minutes > 0
                || told.stream().anyMatch(entry -> entry.writing().what() == DiaryEvent.DONE);
        return OfferedLine.of(line, minutes, done, byTime(agreement, line, minutes), billedIn(line, bills));
    }

    private @Nullable Money byTime(Agreement agreement, AgreementLine line, int minutes) {
        return minutes == 0
                ? null
                : Money.forMinutes(minutes, agreement.perHourMinor())
                        .plus(treatments.get(line.treatmentId()).materialMinor());
    }

    private static @Nullable Invoice billedIn(AgreementLine line, List<Billed> bills) {
        return bills.stream()
                .filter(Billed::standing)
                .filter(bill -> bill.bills(line.treatmentId()))
                .map(Billed::invoice)
                .findFirst()
                .orElse(null);
    }

    private static int minutes(List<DiaryEntry> entries) {
        return entries.stream()
                .map(entry -> entry.writing().minutes())
                .filter(minutes -> minutes != null)
                .reduce(0, Integer::sum);
    }
}
