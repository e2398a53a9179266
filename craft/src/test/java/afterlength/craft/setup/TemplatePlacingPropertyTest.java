package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A template keeps its own form and meets the two outer wood points, wherever and however turned it was read off. */
class TemplatePlacingPropertyTest {
    /** Read off an arc at a hundred points, anywhere and turned. */
    private static TemplateCrown template(double radius_mm, double halfSweep_rad, SplittableRandom random) {
        double turn_rad = random.nextDouble(-0.5, 0.5);
        double y_mm = random.nextDouble(-100, 100);
        double z_mm = random.nextDouble(-100, 100);
        return new TemplateCrown(IntStream.rangeClosed(0, 400)
                .mapToDouble(i -> Math.PI / 2 + turn_rad + halfSweep_rad * (1 - i / 200.0))
                .mapToObj(at -> new CrossPoint(y_mm + radius_mm * Math.cos(at), z_mm + radius_mm * Math.sin(at)))
                .toList());
    }

    @Test
    void aTemplateReadOffAnArcGivesTheBridgeOfThatArc() {
        for (long seed = 1; seed <= 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = Bench.violin();
            BridgeShape arc = Bench.shape(inputs.withCrown(new RadiusCrown(42)));
            BridgeShape template = Bench.shape(inputs.withCrown(template(42, 0.6, random)));
            for (int i = 0; i < 4; i++) {
                // chords of the reading lie below the arc by 42 · 0.003² / 8
                assertThat(template.strings().get(i).woodHeight().mm())
                        .as("seed " + seed)
                        .isCloseTo(arc.strings().get(i).woodHeight().mm(), within(1e-3));
            }
        }
    }

    @Test
    void theOuterPointsAreMetExactly() {
        for (long seed = 1; seed <= 200; seed++) {
            BridgeInputs inputs = Bench.violin().withCrown(template(38, 0.8, new SplittableRandom(seed)));
            BridgeShape shape = Bench.shape(inputs);
            assertThat(shape.strings().get(0).boardEndClearance().mm())
                    .as("seed " + seed)
                    .isCloseTo(5.5, within(1e-9));
            assertThat(shape.strings().get(3).boardEndClearance().mm())
                    .as("seed " + seed)
                    .isCloseTo(3.5, within(1e-9));
        }
    }

    @Test
    void aSymmetricalTemplateLiesSymmetrically() {
        TemplateCrown peaked =
                new TemplateCrown(List.of(new CrossPoint(0, 0), new CrossPoint(25, 9), new CrossPoint(50, 0)));
        CrossPoint bass = new CrossPoint(-16, 1);
        CrossPoint treble = new CrossPoint(16, 1);
        List<CrossPoint> placed =
                TemplatePlacing.find(peaked, bass, treble).orElseThrow().vertices();
        assertThat(placed).hasSize(3);
        assertThat(placed.get(1).y_mm()).isCloseTo(0, within(1e-9));
        assertThat(placed.get(1).z_mm()).isCloseTo(1 + 16 * 9 / 25.0, within(1e-9));
    }

    @Test
    void aTemplateThatWouldOverhangIsNotLaid() {
        TemplateCrown steep = new TemplateCrown(
                List.of(new CrossPoint(0, 0), new CrossPoint(1, 30), new CrossPoint(44, 30), new CrossPoint(45, 0)));
        CrossPoint bass = new CrossPoint(-20, 0);
        assertThat(TemplatePlacing.find(steep, bass, new CrossPoint(24.8, 0))).isPresent();
        assertThat(TemplatePlacing.find(steep, bass, new CrossPoint(20, 20))).isEmpty();
    }
}
