package afterlength.start.demo;

import afterlength.sight.camera.Pixel;
import afterlength.sight.picture.PictureFile;
import afterlength.workshop.agreement.Consent;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographWords;
import afterlength.workshop.examination.Quantity;
import afterlength.workshop.examination.Taken;
import afterlength.workshop.instrument.Visit;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Short words for the many things that happen in one visit of the demonstration. */
final class DemoVisit {
    private final DemoStores stores;
    private final Visit visit;
    private final String hand;
    private final List<Treatment> offered = new ArrayList<>();

    DemoVisit(DemoStores stores, Visit visit, String hand) {
        this.stores = stores;
        this.visit = visit;
        this.hand = hand;
    }

    long id() {
        return visit.id();
    }

    String hand() {
        return hand;
    }

    long picture(DemoPicture picture, Moment moment) throws IOException {
        PictureFile file = new PictureFile(picture.fileName(), DemoPictures.jpeg(picture));
        String view = view(picture.view());
        Taken taken = stores.photographs().take(visit.id(), file, new PhotographWords(moment, view, picture.caption()));
        if (taken instanceof Taken.Kept kept) {
            return kept.photograph().id();
        }
        throw new IllegalStateException("the demonstration's own picture was not taken: " + taken);
    }

    private static String view(DemoView view) {
        return switch (view) {
            case FRONT -> "front";
            case BACK -> "back";
            case CLOSE -> "detail";
        };
    }

    /** What was seen at one place, with its size. */
    record Seen(
            String part,
            String kind,
            String place,
            @Nullable Double size_mm,
            double plusMinus_mm,
            String noSize,
            FindingAge age,
            Answer hinders,
            Answer worse,
            String observation,
            String interpretation) {}

    long finding(Seen seen, Long... pictures) {
        Instant now = stores.clock().instant();
        return stores.findings()
                .add(
                        new Finding(
                                0,
                                visit.id(),
                                null,
                                false,
                                seen.part(),
                                seen.kind(),
                                seen.place(),
                                seen.size_mm(),
                                seen.size_mm() == null ? null : seen.plusMinus_mm(),
                                seen.noSize(),
                                seen.age(),
                                seen.hinders(),
                                seen.worse(),
                                seen.observation(),
                                seen.interpretation(),
                                now,
                                hand,
                                now),
                        List.of(pictures));
    }

    /** A crack marked on its picture, as x and y in turn. */
    void markCrack(long picture, long finding, double... pixels) {
        List<Pixel> points = new ArrayList<>();
        for (int n = 0; n < pixels.length; n += 2) {
            points.add(new Pixel(pixels[n], pixels[n + 1]));
        }
        stores.marks()
                .addCrack(
                        visit.id(),
                        picture,
                        finding,
                        points,
                        hand,
                        stores.clock().instant());
    }

    long measure(Moment moment, Quantity quantity, double value, double plusMinus, double air_C, double air_pct) {
        Instant now = stores.clock().instant();
        return stores.measures()
                .add(new Measure(
                        0,
                        visit.id(),
                        null,
                        false,
                        moment,
                        quantity.name(),
                        value,
                        quantity.unit(),
                        plusMinus,
                        quantity.meaning(),
                        air_C,
                        air_pct,
                        now,
                        hand,
                        now));
    }

    Treatment offer(String template, Collection<Long> findings) {
        Treatment treatment =
                stores.treatments().add(Treatment.from(TreatmentTemplates.get(template), visit.id()), findings);
        offered.add(treatment);
        return treatment;
    }

    /** The owner agrees to all that was offered but these. */
    void agree(String owner, Means means, @Nullable LocalDate promised, String remark, Treatment... declined) {
        Set<Long> accepted = new HashSet<>(offered.stream().map(Treatment::id).toList());
        for (Treatment one : declined) {
            accepted.remove(one.id());
        }
        LocalDate today =
                LocalDate.ofInstant(stores.clock().instant(), stores.clock().getZone());
        stores.agreements().agree(new Consent(visit.id(), accepted, today, owner, means, null, promised, remark, hand));
    }
}
