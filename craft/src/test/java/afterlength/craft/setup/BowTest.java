package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the bow answers, refuses and warns of. */
class BowTest {
    private static final BridgeShape VIOLIN = Bench.shape(Bench.violinWithBody());

    private static List<Problem> problems(BridgeShape shape, BowPlace place) {
        return ((BowRefused) BowClearance.at(shape, place)).problems();
    }

    @Test
    void everythingWrongIsNamedAtOnce() {
        BowPlace wrong = new BowPlace(400, -1, Map.of("A", 50.0, "D", 330.0, "H", 164.0));
        assertThat(problems(VIOLIN, wrong))
                .extracting(Problem::at)
                .containsExactly(
                        "/bow/distance_mm", "/bow/force_N", "/stopped_at_mm/A", "/stopped_at_mm/D", "/stopped_at_mm/H");
    }

    @Test
    void aStopBeyondTheBoardIsRefused() {
        assertThat(problems(VIOLIN, new BowPlace(30, 0, Map.of("A", 50.0))))
                .extracting(Problem::message)
                .containsExactly(
                        "String A is stopped 50 mm from the bridge; it must be at least 58 mm, where the board ends, and"
                                + " less than the speaking length of 328 mm. Measure from the bridge to the finger.");
    }

    @Test
    void theBowPlaysBetweenFingerAndBridge() {
        assertThat(problems(VIOLIN, new BowPlace(90, 0, Map.of("A", 82.0))))
                .extracting(Problem::message)
                .containsExactly(
                        "String A is stopped 82 mm from the bridge; it must be more than 90 mm, for the bow plays between"
                                + " finger and bridge. Move the bow or the finger.");
    }

    @Test
    void aNameWithASlashKeepsItsPointer() {
        assertThat(problems(VIOLIN, new BowPlace(30, 0, Map.of("A/1", 164.0))))
                .extracting(Problem::at)
                .containsExactly("/stopped_at_mm/A~11");
    }

    @Test
    void pressingNeedsTensionsAndLightnessDoesNot() {
        List<FittedString> strings = new ArrayList<>(VIOLIN.inputs().strings());
        strings.set(3, FittedString.ofDiameter("E", 0.26));
        BridgeShape shape =
                Bench.shape(VIOLIN.inputs().change().strings(strings).done());
        assertThat(problems(shape, BowPlace.onOpenStrings(30, 1)))
                .containsExactly(
                        new Problem(
                                "/strings/3/tension_N",
                                null,
                                "The tension of string E is not known; a pressing bow needs it. Give the tension, or a bow force of 0 N."));
        BowReading light = (BowReading) BowClearance.at(shape, BowPlace.onOpenStrings(30, 0));
        assertThat(light.strings().get(3).findForceMeetingNeighbours()).isEmpty();
        assertThat(light.strings().get(2).findForceMeetingNeighbours()).isPresent();
    }

    @Test
    void withoutABodyTheOuterStringsHaveOneLimitAndNoClearAngle() {
        BridgeShape shape = Bench.shape(Bench.violin());
        BowReading reading = (BowReading) BowClearance.at(shape, new BowPlace(30, 1, Map.of("A", 164.0)));
        BowedString g = reading.strings().get(0);
        assertThat(g.findLimitBass()).isEmpty();
        assertThat(g.findLimitTreble()).isPresent();
        assertThat(g.findClearAngle()).isEmpty();
        assertThat(reading.caveats()).containsExactly(new Caveat.ScoopNotMeasured(), new Caveat.WaistNotMeasured());
        assertThat(reading.findTightest()).map(BowedString::name).contains("A");
    }

    @Test
    void crossedLimitsLeaveNothing() {
        BowReading reading = (BowReading) BowClearance.at(VIOLIN, new BowPlace(41, 3, Map.of("D", 82.0)));
        BowedString d = reading.findTightest().orElseThrow();
        assertThat(d.name()).isEqualTo("D");
        assertThat(d.findClearAngle().orElseThrow().deg()).isZero();
        assertThat(d.findMargin().orElseThrow().mm()).isNegative();
    }

    @Test
    void theMapHoldsWhatSingleReadingsSay() {
        BowMapAxes usual = BowMapAxes.usual(328);
        BowMapAxes axes = new BowMapAxes(usual.semitones(), usual.distances_mm(), usual.forces_N());
        BowMap map = (BowMap) BowMap.of(VIOLIN, axes);
        assertThat(map.cells()).hasSize(4 * 25 * 3 * 3);
        for (BowCell cell : map.cells()) {
            String name = map.names().get(cell.string());
            double stopped_mm = 328 * Math.pow(2, -cell.semitones() / 12.0);
            Map<String, Double> stops = cell.semitones() == 0 ? Map.of() : Map.of(name, stopped_mm);
            BowReading single =
                    (BowReading) BowClearance.at(VIOLIN, new BowPlace(cell.distance_mm(), cell.force_N(), stops));
            assertThat(single.strings()
                            .get(cell.string())
                            .findClearAngle()
                            .orElseThrow()
                            .deg())
                    .isCloseTo(cell.clearAngle_deg(), within(1e-9));
        }
        assertThat(map.findTightest().orElseThrow().opening_deg())
                .isEqualTo(map.cells().stream()
                        .mapToDouble(BowCell::opening_deg)
                        .min()
                        .orElseThrow());
        assertThat(map.findEarliestMeeting(1)).isPresent();
    }

    @Test
    void theMapLeavesOutWhatCannotBePlayed() {
        BowMapAxes axes = new BowMapAxes(List.of(0, 24, 36), List.of(30.0, 90.0), List.of(0.0));
        BowMap map = (BowMap) BowMap.of(VIOLIN, axes);
        // 36 semitones stop 41 mm from the bridge, beyond the board; 24 stop at 82 mm, behind a bow at 90 mm
        assertThat(map.cells()).hasSize(4 * 3);
    }

    @Test
    void theUsualMapStaysWithinAQuarterOfTheSoundingString() {
        BowMap map = (BowMap) BowMap.of(VIOLIN, BowMapAxes.usual(328));
        // an eighth of the open string up to the octave, a thirty-second and a sixteenth up to two octaves
        assertThat(map.cells()).hasSize(4 * (25 + 25 + 13) * 3);
    }

    @Test
    void aMapOfNonsenseIsRefused() {
        BowMapAxes axes = new BowMapAxes(List.of(-1), List.of(Double.NaN), List.of(99.0), 0);
        assertThat(((BowRefused) BowMap.of(VIOLIN, axes)).problems())
                .extracting(Problem::at)
                .containsExactly("/bow/semitones/0", "/bow/distances_mm/0", "/bow/forces_N/0", "/bow/farthest_part");
    }
}
