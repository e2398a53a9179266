package afterlength.workshop.retouch;

import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a worn area from what was typed. */
final class WornAreaForm {
    private static final double LARGEST_CM2 = 20_000;

    private WornAreaForm() {}

    /** Null when a problem was noted. */
    static @Nullable WornArea read(Typed typed, long visitId, List<Finding> findings, List<Varnish> book, Instant now) {
        long finding = chosen(
                typed,
                "finding",
                "The finding",
                findings.stream().map(Finding::id).toList());
        long varnish = chosen(
                typed, "varnish", "The batch", book.stream().map(Varnish::id).toList());
        double area_cm2 = typed.requiredDecimal("area_cm2", "The worn area", "cm²", 0.01, LARGEST_CM2);
        double plusMinus_cm2 = typed.requiredDecimal("plus_minus_cm2", "The ± of the area", "cm²", 0.01, LARGEST_CM2);
        double dry_um = typed.requiredDecimal("dry_um", "The build when dry", "µm", 0.5, 1000);
        double wet_um = typed.requiredDecimal("wet_coat_um", "A coat when wet", "µm", 1, 1000);
        String hand = typed.required("hand", "Whose hands", 60);
        return typed.sound()
                ? new WornArea(
                        0, visitId, finding, varnish, null, false, area_cm2, plusMinus_cm2, dry_um, wet_um, now, hand)
                : null;
    }

    private static long chosen(Typed typed, String name, String label, List<Long> ids) {
        String text = typed.raw(name);
        if (ids.stream().noneMatch(id -> Long.toString(id).equals(text))) {
            typed.note(name, label + " is not chosen; choose one of the list.");
            return 0;
        }
        return Long.parseLong(text);
    }
}
