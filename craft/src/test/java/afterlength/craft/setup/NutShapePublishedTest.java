package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** docs/sources.md#cello-nut: a C of 1.7 mm, a third of it (0.6) and 0.75 of clearance: 1.35 mm before the grooves are cut. */
class NutShapePublishedTest {
    @Test
    void theNutOfACelloStandsAsPrintedBeforeItsGrooves() {
        List<FittedString> strings = List.of(
                FittedString.ofDiameter("C", 1.7),
                FittedString.ofDiameter("G", 1.3),
                FittedString.ofDiameter("D", 1.1),
                FittedString.ofDiameter("A", 0.9));
        NutShape nut =
                NutShape.of(Bench.shape(Bench.cello().change().strings(strings).done()));
        NutSeat c = nut.seats().get(0);
        assertThat(c.heightBeforeGrooves().mm()).isCloseTo(1.35, within(0.04)); // printed with 0.6 for a third of 1.7
        assertThat(c.clearance().mm()).isEqualTo(0.75);
        assertThat(nut.seats().get(3).clearance().mm()).isEqualTo(0.5);
    }

    @Test
    void theFloorOfAGrooveIsTheUndersideOfItsString() {
        BridgeShape shape = Bench.shape(Bench.violin());
        NutShape nut = NutShape.of(shape);
        for (int i = 0; i < 4; i++) {
            assertThat(nut.seats().get(i).floor())
                    .isEqualTo(shape.strings().get(i).nutUnderside());
            assertThat(nut.seats().get(i).y()).isEqualTo(shape.strings().get(i).nutY());
        }
    }
}
