package afterlength.craft.setup;

import afterlength.craft.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What is unusual in a shape that can be cut. */
final class BridgeCaveats {
    /** An inner string this much outside the outer two is worth a word; one radius throughout stays within 0.02 mm of linear. */
    private static final double INNER_ALLOWANCE_mm = 0.1;

    private final BridgeInputs inputs;
    private final List<SeatedString> strings;
    private final CrownCurve crown;
    private final List<Caveat> caveats = new ArrayList<>();

    private BridgeCaveats(BridgeInputs inputs, List<SeatedString> strings, CrownCurve crown) {
        this.inputs = inputs;
        this.strings = strings;
        this.crown = crown;
    }

    static List<Caveat> list(BridgeInputs inputs, List<SeatedString> strings, CrownCurve crown) {
        return new BridgeCaveats(inputs, strings, crown).list();
    }

    private List<Caveat> list() {
        double length_mm = inputs.speakingLength_mm();
        Optional<CommonSetup> common = CommonSetup.find(length_mm);
        common.ifPresentOrElse(this::compare, () -> caveats.add(new Caveat.NoCommonRange(Length.ofMm(length_mm))));
        inputsThemselves();
        if (inputs.crown() instanceof EvenPlayCrown even) {
            evenPlay(even);
        }
        inner(strings.subList(1, strings.size() - 1));
        return caveats;
    }

    private void compare(CommonSetup common) {
        common.find(SetupQuantity.PROJECTION).ifPresent(this::projection);
        outside(common, SetupQuantity.CENTRE_HEIGHT, inputs.projection_mm() + crown.height_mm(0));
        outside(
                common,
                SetupQuantity.BOARD_END_CLEARANCE_BASS,
                inputs.boardEndClearance_mm().bass_mm());
        outside(
                common,
                SetupQuantity.BOARD_END_CLEARANCE_TREBLE,
                inputs.boardEndClearance_mm().treble_mm());
        outside(
                common,
                SetupQuantity.NUT_SPACING,
                strings.get(last()).nutY().mm() - strings.get(0).nutY().mm());
        outside(
                common,
                SetupQuantity.BRIDGE_SPACING,
                strings.get(last()).bridgeY().mm() - strings.get(0).bridgeY().mm());
        outside(common, SetupQuantity.BOARD_RADIUS, inputs.board().radius_mm());
        if (inputs.crown() instanceof RadiusCrown circle) {
            outside(common, SetupQuantity.CROWN_RADIUS, circle.radius_mm());
        }
        BassTreble scoop_mm = inputs.board().scoop_mm();
        if (scoop_mm != null) {
            outside(common, SetupQuantity.SCOOP_BASS, scoop_mm.bass_mm());
            outside(common, SetupQuantity.SCOOP_TREBLE, scoop_mm.treble_mm());
        }
    }

    private int last() {
        return strings.size() - 1;
    }

    private void projection(CommonRange range) {
        Length projection = Length.ofMm(inputs.projection_mm());
        List<HeightCause> causes = HeightCause.listInOrderOfChecking();
        if (projection.mm() < range.low()) {
            caveats.add(new Caveat.ProjectionLow(projection, range, causes));
        } else if (projection.mm() > range.high()) {
            caveats.add(new Caveat.ProjectionHigh(projection, range, causes));
        }
    }

    private void outside(CommonSetup common, SetupQuantity quantity, double value) {
        common.find(quantity)
                .filter(range -> !range.holds(value))
                .ifPresent(range -> caveats.add(new Caveat.OutsideCommonRange(quantity, value, range)));
    }

    private void inputsThemselves() {
        BassTreble wanted_mm = inputs.boardEndClearance_mm();
        if (wanted_mm.treble_mm() > wanted_mm.bass_mm()) {
            caveats.add(
                    new Caveat.TrebleAboveBass(Length.ofMm(wanted_mm.bass_mm()), Length.ofMm(wanted_mm.treble_mm())));
        }
        if (inputs.grooveFraction() > 0.5) {
            caveats.add(new Caveat.DeepGroove(inputs.grooveFraction()));
        }
        if (crown instanceof CrownArc arc) {
            double smallest_mm = CrownArc.smallestUpright_mm(arc.from(), arc.to());
            if (arc.radius_mm() < smallest_mm) {
                caveats.add(new Caveat.CrownUndercut(Length.ofMm(arc.radius_mm()), Length.ofMm(smallest_mm)));
            }
        }
    }

    private void evenPlay(EvenPlayCrown even) {
        caveats.addAll(BowCaveats.list(
                inputs, true, Collections.max(even.axesFor(inputs).distances_mm())));
        if (even.axes() == null && !inputs.allTensionsKnown()) {
            caveats.add(new Caveat.EvenPlayWithoutForce());
        }
    }

    private void inner(List<SeatedString> inner) {
        inner.stream()
                .filter(string -> string.boardEndClearance().mm() <= 0)
                .forEach(string ->
                        caveats.add(new Caveat.StringTouchesBoard(string.name(), string.boardEndClearance())));
        List<SeatedString> outside = inner.stream().filter(this::outsideOuter).toList();
        if (!outside.isEmpty()) {
            caveats.add(new Caveat.InnerClearanceOutsideOuter(
                    outside.stream().map(SeatedString::name).toList(),
                    outside.stream().map(SeatedString::boardEndClearance).toList(),
                    Length.ofMm(inputs.boardEndClearance_mm().smaller_mm()),
                    Length.ofMm(inputs.boardEndClearance_mm().larger_mm())));
        }
    }

    private boolean outsideOuter(SeatedString string) {
        double clearance_mm = string.boardEndClearance().mm();
        BassTreble wanted_mm = inputs.boardEndClearance_mm();
        return clearance_mm > 0
                && (clearance_mm < wanted_mm.smaller_mm() - INNER_ALLOWANCE_mm
                        || clearance_mm > wanted_mm.larger_mm() + INNER_ALLOWANCE_mm);
    }
}
