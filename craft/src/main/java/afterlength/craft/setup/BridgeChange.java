package afterlength.craft.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Inputs being changed one answer at a time; nothing is checked here. */
public final class BridgeChange {
    private double speakingLength_mm;
    private Board board;
    private StringSpacing nutSpacing;
    private StringSpacing bridgeSpacing;
    private BassTreble nutClearance_mm;
    private BassTreble boardEndClearance_mm;
    private ClearanceConvention clearanceConvention;
    private double projection_mm;
    private double grooveFraction;
    private Crown crown;
    private List<FittedString> strings;
    private @Nullable Waist waist;

    BridgeChange(BridgeInputs inputs) {
        speakingLength_mm = inputs.speakingLength_mm();
        board = inputs.board();
        nutSpacing = inputs.nutSpacing();
        bridgeSpacing = inputs.bridgeSpacing();
        nutClearance_mm = inputs.nutClearance_mm();
        boardEndClearance_mm = inputs.boardEndClearance_mm();
        clearanceConvention = inputs.clearanceConvention();
        projection_mm = inputs.projection_mm();
        grooveFraction = inputs.grooveFraction();
        crown = inputs.crown();
        strings = inputs.strings();
        waist = inputs.waist();
    }

    public BridgeChange speakingLength_mm(double other) {
        speakingLength_mm = other;
        return this;
    }

    public BridgeChange board(Board other) {
        board = other;
        return this;
    }

    public BridgeChange nutSpacing(StringSpacing other) {
        nutSpacing = other;
        return this;
    }

    public BridgeChange bridgeSpacing(StringSpacing other) {
        bridgeSpacing = other;
        return this;
    }

    public BridgeChange nutClearance_mm(BassTreble other) {
        nutClearance_mm = other;
        return this;
    }

    public BridgeChange boardEndClearance_mm(BassTreble other) {
        boardEndClearance_mm = other;
        return this;
    }

    public BridgeChange clearanceConvention(ClearanceConvention other) {
        clearanceConvention = other;
        return this;
    }

    public BridgeChange projection_mm(double other) {
        projection_mm = other;
        return this;
    }

    public BridgeChange grooveFraction(double other) {
        grooveFraction = other;
        return this;
    }

    public BridgeChange crown(Crown other) {
        crown = other;
        return this;
    }

    public BridgeChange strings(List<FittedString> other) {
        strings = other;
        return this;
    }

    public BridgeChange waist(@Nullable Waist other) {
        waist = other;
        return this;
    }

    public BridgeInputs done() {
        return new BridgeInputs(
                speakingLength_mm,
                board,
                nutSpacing,
                bridgeSpacing,
                nutClearance_mm,
                boardEndClearance_mm,
                clearanceConvention,
                projection_mm,
                grooveFraction,
                crown,
                strings,
                waist);
    }
}
