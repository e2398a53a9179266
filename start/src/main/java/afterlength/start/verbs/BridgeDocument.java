package afterlength.start.verbs;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.Waist;
import afterlength.craft.units.Length;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The document of the bridge, which other verbs read too. Only whether a value is a number is judged here; what it may be is
 * judged in {@code craft}, where NaN stands for what could not be read.
 *
 * @param caveats what the person should know about the reading itself
 * @param instrument how a sheet names the instrument
 * @param footSpan over the outer edges of both feet, for a sheet; null when it was not measured
 */
record BridgeDocument(
        BridgeInputs inputs,
        List<String> caveats,
        String instrument,
        @Nullable Length footSpan) {
    private static final String NOT_NAMED = "instrument not named";
    /** Wider than the bridge of any double bass. */
    private static final Range FEET = Range.positive(300, "mm");

    static final String EXAMPLE = """
            {
              "speaking_length_mm": 328,
              "board_length_mm": 270,
              "board_radius_mm": 42,
              "nut_spacing_mm": 16.5,
              "bridge_spacing_mm": 33.5,
              "nut_clearance_mm": { "bass": 0.45, "treble": 0.30 },
              "board_end_clearance_mm": { "bass": 5.5, "treble": 3.5 },
              "clearance_convention": "square",
              "projection_mm": 27,
              "groove_fraction": 0.3333333333,
              "crown": { "radius_mm": 42 },
              "strings": [
                { "name": "G", "diameter_mm": 0.8, "tension_N": 44 },
                { "name": "D", "diameter_mm": 0.7, "tension_N": 45 },
                { "name": "A", "diameter_mm": 0.6, "tension_N": 55 },
                { "name": "E", "diameter_mm": 0.26, "tension_N": 75 }
              ]
            }
            """;

    static final String KEYS = """
              speaking_length_mm      from nut to bridge, measured
              board_length_mm         from nut to the end of the board
              board_radius_mm         at its end; optional board_radius_nut_mm when it differs at the nut
              nut_spacing_mm          centre to centre, outer to outer; optional when every string has nut_y_mm
              bridge_spacing_mm       the same at the bridge; optional when every string has bridge_y_mm
              spacing                 optional: centres (usual) or gaps, which are then made equal
              nut_clearance_mm        underside of string to board at the nut, bass and treble
              board_end_clearance_mm  the clearance wanted at the board end, bass and treble
              clearance_convention    optional: square to the board (usual) or upright
              projection_mm           height of the board line over the belly at the bridge
              groove_fraction         optional: depth of the groove as a part of the string's diameter, usual 1/3
              scoop_mm                optional: depth of the scoop at mid-length, bass and treble
              waist_width_mm          optional, with edge_drop_mm: the waist the bow meets on the outer strings
              crown                   radius_mm, or template_mm (points [y,z] from bass to treble), or "even play"
              strings                 3 to 6 from bass to treble, each with name and diameter_mm; optional tension_N, or
                                      linear_density_g_m with frequency_Hz; optional nut_y_mm and bridge_y_mm
              instrument              optional: how a sheet names the instrument
              foot_span_mm            optional, for a sheet: over the outer edges of both feet
            """;

    private static final Range MILLIMETRES = Range.any("mm");

    static BridgeDocument read(DocumentReader document) {
        StringsDocument strings = StringsDocument.read(document);
        BridgeInputs inputs = new BridgeInputs(
                number(document, "speaking_length_mm"),
                board(document),
                strings.spacing("nut"),
                strings.spacing("bridge"),
                pair(document.get("nut_clearance_mm")),
                pair(document.get("board_end_clearance_mm")),
                convention(document),
                number(document, "projection_mm"),
                document.find("groove_fraction")
                        .map(fraction -> fraction.asNumber(Range.any("")))
                        .orElse(BridgeInputs.USUAL_GROOVE_FRACTION),
                CrownDocument.read(document.get("crown")),
                strings.fitted(),
                findWaist(document).orElse(null));
        String instrument =
                document.find("instrument").map(DocumentValue::asText).orElse(NOT_NAMED);
        return new BridgeDocument(inputs, strings.caveats(), instrument, footSpan(document));
    }

    private static @Nullable Length footSpan(DocumentReader document) {
        double span_mm =
                document.find("foot_span_mm").map(span -> span.asNumber(FEET)).orElse(Double.NaN);
        return Double.isFinite(span_mm) ? Length.ofMm(span_mm) : null;
    }

    private static double number(DocumentReader document, String key) {
        return document.get(key).asNumber(MILLIMETRES);
    }

    private static Board board(DocumentReader document) {
        @Nullable
        Double radiusNut_mm = document.find("board_radius_nut_mm")
                .map(radius -> radius.asNumber(MILLIMETRES))
                .orElse(null);
        @Nullable
        BassTreble scoop_mm =
                document.find("scoop_mm").map(BridgeDocument::pair).orElse(null);
        return new Board(
                number(document, "board_length_mm"), number(document, "board_radius_mm"), radiusNut_mm, scoop_mm);
    }

    private static BassTreble pair(DocumentValue value) {
        DocumentReader pair = value.asObject();
        return new BassTreble(number(pair, "bass"), number(pair, "treble"));
    }

    private static ClearanceConvention convention(DocumentReader document) {
        return document.find("clearance_convention")
                .flatMap(value -> value.asOneOf(
                        List.of(ClearanceConvention.values()), one -> one.name().toLowerCase(Locale.ROOT)))
                .orElse(ClearanceConvention.SQUARE);
    }

    /** Width and drop belong together: with one alone the limit of the bow cannot be drawn. */
    private static Optional<Waist> findWaist(DocumentReader document) {
        return document.hasAny("waist_width_mm", "edge_drop_mm")
                ? Optional.of(new Waist(number(document, "waist_width_mm"), number(document, "edge_drop_mm")))
                : Optional.empty();
    }
}
