package afterlength.workshop.handover;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.AgreementLine;
import afterlength.workshop.examination.Corrections;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasurePair;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.SvgPen;
import afterlength.workshop.retouch.MendedLine;
import afterlength.workshop.setup.BridgeDrawing;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What an owner takes home in writing: what came, what was seen, what was agreed, what was done with which materials and how each
 * can be undone, what was left, measures before and after, the bridge, care, and who answers for it. Printed before the handover
 * it says that the work goes on.
 *
 * @param days what was done, a day at a time
 * @param bridge the bridge of the set-up it goes home with, null when none was drawn
 * @param mendedLines how far mended lines stood out and stand out
 * @param handover null while the instrument is still in the house
 */
record FinalReport(
        Settings shop,
        Instrument instrument,
        Owner owner,
        Visit visit,
        List<Finding> findings,
        @Nullable Agreement agreement,
        List<AgreementLine> lines,
        List<WorkDay> days,
        List<UsedMaterial> materials,
        List<GluedJoint> joints,
        List<MeasurePair> pairs,
        List<Measure> measuredOnce,
        Corrections corrections,
        @Nullable BridgeShape bridge,
        List<MendedLine> mendedLines,
        List<Photograph> before,
        List<Photograph> during,
        List<Photograph> after,
        @Nullable Handover handover) {

    List<AgreementLine> accepted() {
        return lines.stream().filter(AgreementLine::accepted).toList();
    }

    List<AgreementLine> declined() {
        return lines.stream().filter(line -> !line.accepted()).toList();
    }

    List<Photograph> pictures() {
        return Stream.of(before, during, after).flatMap(List::stream).toList();
    }

    /** Both measures of every pair, in the order of the table. */
    List<Measure> paired() {
        return pairs.stream()
                .flatMap(pair -> Stream.of(pair.before(), pair.after()))
                .toList();
    }

    long minutes() {
        return days.stream().mapToLong(WorkDay::minutes).sum();
    }

    String bridgeDrawing() {
        return bridge == null ? "" : SvgPen.forPaper(BridgeDrawing.forPaper(bridge, null));
    }

    static String nameOf(Photograph photograph) {
        return "picture-" + photograph.id();
    }
}
