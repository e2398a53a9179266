package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.TemplateCrown;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A set-up in the columns of its table; strings and readings have tables of their own. */
record SetupRow(
        long id,
        long visitId,
        SetupMoment moment,
        double speakingLengthMm,
        double boardLengthMm,
        double boardRadiusMm,
        double nutSpacingMm,
        double bridgeSpacingMm,
        double nutClearanceBassMm,
        double nutClearanceTrebleMm,
        double clearanceBassMm,
        double clearanceTrebleMm,
        ClearanceConvention clearanceConvention,
        double projectionMm,
        double grooveFraction,
        double crownRadiusMm,
        Instant savedAt,
        String hand,
        CrownKind crown,
        String crownTemplate,
        SpacingKind spacing) {

    Setup with(List<StringRow> strings, Map<BenchReading, Double> readings) {
        List<String> notes = strings.stream().map(StringRow::note).toList();
        SetupBench bench = new SetupBench(inputs(strings, readings), crownRadiusMm, crownTemplate, notes, readings);
        return new Setup(id, visitId, moment, bench, savedAt, hand);
    }

    private BridgeInputs inputs(List<StringRow> strings, Map<BenchReading, Double> readings) {
        double a4_Hz = BenchStrings.a4_Hz(readings);
        return new BridgeInputs(
                speakingLengthMm,
                BenchReadings.board(boardLengthMm, boardRadiusMm, readings),
                spacing.spacing(nutSpacingMm, places(strings, StringRow::nutYMm)),
                spacing.spacing(bridgeSpacingMm, places(strings, StringRow::bridgeYMm)),
                new BassTreble(nutClearanceBassMm, nutClearanceTrebleMm),
                new BassTreble(clearanceBassMm, clearanceTrebleMm),
                clearanceConvention,
                projectionMm,
                grooveFraction,
                crown.crown(
                        crownRadiusMm,
                        new TemplateCrown(TemplateText.read(crownTemplate).points())),
                strings.stream().map(string -> string.fitted(a4_Hz)).toList(),
                BenchReadings.waist(readings));
    }

    private List<Double> places(List<StringRow> strings, Function<StringRow, @Nullable Double> place) {
        return spacing == SpacingKind.GIVEN
                ? strings.stream()
                        .map(string -> {
                            @Nullable Double y_mm = place.apply(string);
                            return y_mm == null ? Double.valueOf(Double.NaN) : y_mm;
                        })
                        .toList()
                : List.of();
    }

    static SetupRow of(Setup setup) {
        BridgeInputs in = setup.inputs();
        return new SetupRow(
                setup.id(),
                setup.visitId(),
                setup.moment(),
                in.speakingLength_mm(),
                in.board().length_mm(),
                in.board().radius_mm(),
                outer(in.nutSpacing(), in),
                outer(in.bridgeSpacing(), in),
                in.nutClearance_mm().bass_mm(),
                in.nutClearance_mm().treble_mm(),
                in.boardEndClearance_mm().bass_mm(),
                in.boardEndClearance_mm().treble_mm(),
                in.clearanceConvention(),
                in.projection_mm(),
                in.grooveFraction(),
                setup.bench().crownRadius_mm(),
                setup.savedAt(),
                setup.hand(),
                CrownKind.of(in.crown()),
                setup.bench().template(),
                SpacingKind.of(in.bridgeSpacing()));
    }

    private static double outer(StringSpacing spacing, BridgeInputs inputs) {
        double[] places_mm = spacing.places_mm(inputs.strings());
        return places_mm[places_mm.length - 1] - places_mm[0];
    }

    Map<String, Object> columns() {
        Map<String, Object> columns = new LinkedHashMap<>();
        columns.put("visitId", visitId);
        columns.put("moment", moment);
        columns.put("speakingLengthMm", speakingLengthMm);
        columns.put("boardLengthMm", boardLengthMm);
        columns.put("boardRadiusMm", boardRadiusMm);
        columns.put("nutSpacingMm", nutSpacingMm);
        columns.put("bridgeSpacingMm", bridgeSpacingMm);
        columns.put("nutClearanceBassMm", nutClearanceBassMm);
        columns.put("nutClearanceTrebleMm", nutClearanceTrebleMm);
        columns.put("clearanceBassMm", clearanceBassMm);
        columns.put("clearanceTrebleMm", clearanceTrebleMm);
        columns.put("clearanceConvention", clearanceConvention);
        columns.put("projectionMm", projectionMm);
        columns.put("grooveFraction", grooveFraction);
        columns.put("crownRadiusMm", crownRadiusMm);
        columns.put("savedAt", savedAt);
        columns.put("hand", hand);
        columns.put("crown", crown);
        columns.put("crownTemplate", crownTemplate);
        columns.put("spacing", spacing);
        return columns;
    }
}
