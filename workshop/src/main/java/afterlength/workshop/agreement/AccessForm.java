package afterlength.workshop.agreement;

import afterlength.craft.access.CleatGrain;
import afterlength.craft.access.CleatPlan;
import afterlength.craft.access.CleatShape;
import afterlength.craft.access.SectionQuestion;
import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Instrument;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Reads a study of access from what was typed, and fills a fresh form. */
final class AccessForm {
    private static final double DRAWN_STEP_MM = 2;
    /** A first line to be moved: from under the lower eye so far down the grain. */
    private static final double DRAWN_CRACK_MM = 60;

    private static final double USUAL_TO_ENDS_MM = 8;
    private static final double USUAL_SPACING_MM = 25;

    private AccessForm() {}

    static AccessStudy read(Typed typed, long findingId, @Nullable Long replaces, List<ShopClamp> clamps, Instant now) {
        CleatShape shape = typed.choice("shape", "How the cleats lie", CleatShape.class);
        CleatGrain grain = typed.choice("grain", "The grain of the cleats", CleatGrain.class);
        AccessChoice chosen = typed.choice("chosen", "What is chosen", AccessChoice.class);
        return new AccessStudy(
                0,
                findingId,
                replaces,
                TracedPoints.typed(TracedPoints.read(typed, "outline", "The edge of the hole", 3)),
                TracedPoints.typed(TracedPoints.read(typed, "crack", "The crack", 2)),
                typed.requiredDecimal("plate_mm", "The thickness of the plate", "mm", 0.5, 20),
                typed.requiredDecimal("depth_mm", "The depth to the back", "mm", 5, 400),
                typed.requiredDecimal("cleat_length_mm", "The length of the cleat", "mm", 1, 60),
                typed.requiredDecimal("cleat_width_mm", "The width of the cleat", "mm", 1, 60),
                typed.requiredDecimal("cleat_thickness_mm", "The thickness of the cleat", "mm", 0.5, 10),
                shape == null ? CleatShape.LOZENGE : shape,
                grain == null ? CleatGrain.DIAGONAL : grain,
                typed.requiredDecimal("spacing_mm", "The spacing", "mm", 5, 100),
                typed.requiredDecimal("to_ends_mm", "The distance to the ends", "mm", 0, 100),
                clamps.stream()
                        .map(ShopClamp::id)
                        .filter(id -> typed.raw("clamp").equals(Long.toString(id)))
                        .findFirst()
                        .orElse(null),
                typed.ticked("seen", "under_post"),
                typed.ticked("seen", "under_bar"),
                Optional.ofNullable(typed.decimal("step_mm", "The step of the edges", "mm", 0, 20))
                        .orElse(0.0),
                typed.ticked("seen", "closes_dry"),
                typed.ticked("seen", "cleanable"),
                chosen == null ? AccessChoice.UNDECIDED : chosen,
                typed.required("hand", "The hand", 60),
                now,
                InsideForm.read(typed));
    }

    /** A hole in drawn proportions and a line below its lower eye, to be replaced by what is traced. */
    static Typed fresh(Instrument instrument, String hand) {
        InstrumentShape shape = shape(instrument);
        Point eye = SoundHole.lowerEye(shape);
        double eyeEdge_mm = shape.fittings().soundHole_mm() * 0.065;
        Map<String, List<String>> typed = new TreeMap<>();
        List<Point> hole =
                SoundHole.treble(shape).outline(DRAWN_STEP_MM).simplified(0.02).points();
        put(typed, "outline", TracedPoints.typed(hole));
        put(
                typed,
                "crack",
                TracedPoints.typed(List.of(eye.plus(0, eyeEdge_mm), eye.plus(0, eyeEdge_mm + DRAWN_CRACK_MM))));
        put(typed, "plate_mm", Figures.typed(SectionQuestion.USUAL_PLATE_MM));
        put(typed, "depth_mm", Figures.typed((double)
                Math.round(shape.fittings().ribHeight_mm())));
        put(typed, "cleat_length_mm", "9.5");
        put(typed, "cleat_width_mm", "9.5");
        put(typed, "cleat_thickness_mm", Figures.typed(CleatPlan.USUAL.thickness_mm()));
        put(typed, "shape", CleatShape.LOZENGE.name());
        put(typed, "grain", CleatGrain.DIAGONAL.name());
        put(typed, "spacing_mm", Figures.typed(USUAL_SPACING_MM));
        put(typed, "to_ends_mm", Figures.typed(USUAL_TO_ENDS_MM));
        put(typed, "chosen", AccessChoice.UNDECIDED.name());
        put(typed, "hand", hand);
        InsideForm.put(typed, Inside.UNTOLD);
        typed.put("seen", List.of("closes_dry", "cleanable"));
        return Typed.knownAll(typed);
    }

    private static InstrumentShape shape(Instrument instrument) {
        InstrumentShape usual = switch (instrument.kind()) {
            case VIOLA -> InstrumentShape.viola();
            case CELLO -> InstrumentShape.cello();
            case DOUBLE_BASS -> InstrumentShape.bass();
            case VIOLIN, OTHER -> InstrumentShape.violin();
        };
        Double body_mm = instrument.bodyLengthMm();
        return body_mm == null ? usual : usual.withBodyLength(body_mm);
    }

    static Typed known(AccessStudy study) {
        Map<String, List<String>> typed = new TreeMap<>();
        put(typed, "outline", study.outline());
        put(typed, "crack", study.crack());
        put(typed, "plate_mm", Figures.typed(study.plateMm()));
        put(typed, "depth_mm", Figures.typed(study.depthMm()));
        put(typed, "cleat_length_mm", Figures.typed(study.cleatLengthMm()));
        put(typed, "cleat_width_mm", Figures.typed(study.cleatWidthMm()));
        put(typed, "cleat_thickness_mm", Figures.typed(study.cleatThicknessMm()));
        put(typed, "shape", study.shape().name());
        put(typed, "grain", study.grain().name());
        put(typed, "spacing_mm", Figures.typed(study.spacingMm()));
        put(typed, "to_ends_mm", Figures.typed(study.toEndsMm()));
        put(typed, "clamp", study.clampId() == null ? "" : Long.toString(study.clampId()));
        put(typed, "step_mm", Figures.typed(study.stepMm()));
        put(typed, "chosen", study.chosen().name());
        put(typed, "hand", study.hand());
        InsideForm.put(typed, study.inside());
        typed.put("seen", seen(study));
        return Typed.knownAll(typed);
    }

    private static List<String> seen(AccessStudy study) {
        return Map.of(
                        "under_post", study.underPost(),
                        "under_bar", study.underBar(),
                        "closes_dry", study.closesDry(),
                        "cleanable", study.cleanable())
                .entrySet()
                .stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static void put(Map<String, List<String>> typed, String name, String value) {
        typed.put(name, List.of(value));
    }
}
