package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A set-up in the columns of its table. */
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
        String hand) {

    Setup withStrings(List<FittedString> strings) {
        return new Setup(id, visitId, moment, inputs(strings), savedAt, hand);
    }

    private BridgeInputs inputs(List<FittedString> strings) {
        return new BridgeInputs(
                speakingLengthMm,
                Board.ofOneRadius(boardLengthMm, boardRadiusMm),
                new StringSpacing.ByCentres(nutSpacingMm),
                new StringSpacing.ByCentres(bridgeSpacingMm),
                new BassTreble(nutClearanceBassMm, nutClearanceTrebleMm),
                new BassTreble(clearanceBassMm, clearanceTrebleMm),
                clearanceConvention,
                projectionMm,
                grooveFraction,
                new RadiusCrown(crownRadiusMm),
                strings,
                null);
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
                outer(in.nutSpacing()),
                outer(in.bridgeSpacing()),
                in.nutClearance_mm().bass_mm(),
                in.nutClearance_mm().treble_mm(),
                in.boardEndClearance_mm().bass_mm(),
                in.boardEndClearance_mm().treble_mm(),
                in.clearanceConvention(),
                in.projection_mm(),
                in.grooveFraction(),
                radius(in),
                setup.savedAt(),
                setup.hand());
    }

    private static double outer(StringSpacing spacing) {
        if (spacing instanceof StringSpacing.ByCentres centres) {
            return centres.outer_mm();
        }
        throw new IllegalArgumentException("the set-up page keeps strings spaced by centres only");
    }

    private static double radius(BridgeInputs inputs) {
        if (inputs.crown() instanceof RadiusCrown crown) {
            return crown.radius_mm();
        }
        throw new IllegalArgumentException("the set-up page keeps crowns of one radius only");
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
        return columns;
    }
}
