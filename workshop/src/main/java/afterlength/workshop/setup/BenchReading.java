package afterlength.workshop.setup;

import afterlength.craft.setup.SetupQuantity;
import afterlength.workshop.examination.Quantity;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What may be known of a set-up beside the bridge itself. Each has one field on the page, called as the arithmetic calls the value
 * when it refuses it, and each is kept only when it was typed.
 */
public enum BenchReading {
    BOARD_RADIUS_NUT("board_radius_nut_mm", "Board radius at the nut", "mm", "Empty: the same throughout."),
    SCOOP_BASS(
            "scoop_mm/bass",
            "Scoop, bass",
            "mm",
            "At mid-length under a straightedge.",
            SetupQuantity.SCOOP_BASS,
            Quantity.BOARD_RELIEF_BASS),
    SCOOP_TREBLE(
            "scoop_mm/treble", "Scoop, treble", "mm", "", SetupQuantity.SCOOP_TREBLE, Quantity.BOARD_RELIEF_TREBLE),
    WAIST_WIDTH("waist_width_mm", "Waist, edge to edge", "mm", "At the bridge.", null, Quantity.WAIST_WIDTH),
    EDGE_DROP("edge_drop_mm", "Edge below the belly", "mm", "Crown of the belly at the bridge to the top of the edge."),
    BOW_DISTANCE("bow/distance_mm", "Bow from the bridge", "mm", ""),
    BOW_FORCE("bow/force_N", "Bow force", "N", ""),
    BOW_SEMITONES("bow/semitones", "Stopped above the open string", "semitones", ""),
    A4("a4_Hz", "The a above middle C", "Hz", ""),
    AFTER_LENGTH(
            "break/after_length_mm",
            "After-length",
            "mm",
            "Bridge to tailpiece fret, along the body.",
            SetupQuantity.AFTER_LENGTH,
            Quantity.AFTER_LENGTH),
    TAIL_HEIGHT("break/tail_height_mm", "Strings at the tailpiece fret", "mm", "Height over the belly at the bridge."),
    TAIL_SPACING("break/tail_spacing_mm", "Outer strings apart there", "mm", ""),
    BOARD_SLOPE(
            "break/board_slope_deg",
            "Slope of the board",
            "°",
            "Against the plane of the edges; 6 to 8 in most violins."),
    HALF_FEET("half_feet_mm", "Centre line to the middle of a foot", "mm", ""),
    POST_BEHIND(
            "post/behind_foot_mm",
            "Behind the treble foot",
            "mm",
            "Back edge of the foot to the post.",
            SetupQuantity.POST_BEHIND_FOOT,
            null),
    POST_INSIDE("post/inside_foot_mm", "In from the end of the foot", "mm", "To the outer side of the post."),
    POST_DIAMETER("post/diameter_mm", "Diameter of the post", "mm", "", SetupQuantity.POST_DIAMETER, null),
    POST_RIBS("post/rib_height_mm", "Ribs at the post", "mm", "Between the gluing planes."),
    BELLY_HEIGHT("post/belly/height_mm", "Belly over its gluing plane", "mm", "Outside, over the post."),
    BELLY_THICKNESS("post/belly/thickness_mm", "Belly thickness there", "mm", ""),
    BELLY_ALONG("post/belly/slope_along_deg", "Belly rises to the tail", "°", "Minus where it falls."),
    BELLY_ACROSS("post/belly/slope_across_deg", "Belly rises to the treble", "°", "Minus where it falls."),
    BACK_HEIGHT("post/back/height_mm", "Back over its gluing plane", "mm", "Outside, at the post."),
    BACK_THICKNESS("post/back/thickness_mm", "Back thickness there", "mm", ""),
    BACK_ALONG("post/back/slope_along_deg", "Back rises to the tail", "°", ""),
    BACK_ACROSS("post/back/slope_across_deg", "Back rises to the treble", "°", "");

    /** Readings of which one alone says nothing. */
    static final List<List<BenchReading>> TOGETHER =
            List.of(List.of(SCOOP_BASS, SCOOP_TREBLE), List.of(WAIST_WIDTH, EDGE_DROP));

    private final String field;
    private final String label;
    private final String unit;
    private final String hint;
    private final @Nullable SetupQuantity quantity;
    private final @Nullable Quantity measured;

    BenchReading(String field, String label, String unit, String hint) {
        this(field, label, unit, hint, null, null);
    }

    BenchReading(
            String field,
            String label,
            String unit,
            String hint,
            @Nullable SetupQuantity quantity,
            @Nullable Quantity measured) {
        this.field = field;
        this.label = label;
        this.unit = unit;
        this.hint = hint;
        this.quantity = quantity;
        this.measured = measured;
    }

    String field() {
        return field;
    }

    String label() {
        return label;
    }

    String unit() {
        return unit;
    }

    String hint() {
        return hint;
    }

    /** The range common in the trade is kept under this. */
    Optional<SetupQuantity> findQuantity() {
        return Optional.ofNullable(quantity);
    }

    /** The examination measures the same thing under this. */
    Optional<Quantity> findMeasured() {
        return Optional.ofNullable(measured);
    }
}
