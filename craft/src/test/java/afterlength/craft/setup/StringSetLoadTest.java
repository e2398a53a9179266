package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A set of strings at its pitch, and what a change of set or standard does. */
class StringSetLoadTest {
    private static final StringSet VIOLIN = new StringSet(
            328,
            440,
            List.of(
                    new StringOrder("G3", new StringMass.LinearDensity(2.28)),
                    new StringOrder("D4", new StringMass.Solid(1.1, StringMaterial.GUT.density_kg_m3())),
                    new StringOrder("A4", new StringMass.FromTension(55)),
                    new StringOrder("E5", new StringMass.Solid(0.26, StringMaterial.STEEL.density_kg_m3()))),
            new StringBreak.Angle(158));

    private static StringSetLoad load(StringSet set) {
        StringSetAnswer answer = StringSetLoad.of(set);
        if (answer instanceof StringSetLoad load) {
            return load;
        }
        throw new AssertionError(answer.toString());
    }

    @Test
    void eachStringIsAnsweredFromWhatIsKnownOfIt() {
        StringSetLoad load = load(VIOLIN);
        assertThat(load.strings().get(2).tension().newton()).isCloseTo(55, within(1e-9));
        assertThat(load.strings().get(2).linearDensity_g_m())
                .isCloseTo(StringMechanics.linearDensity_g_m(55, 440, 328), within(1e-12));
        assertThat(load.strings().get(0).frequency().hertz()).isCloseTo(195.998, within(0.001));
        assertThat(load.findTotalDownforce().orElseThrow().newton())
                .isCloseTo(StringMechanics.downforce_N(load.totalTension().newton(), 158), within(1e-9));
        assertThat(load.findLean()).isEmpty();
        assertThat(load.totalTension().kgf()).isCloseTo(load.totalTension().newton() / 9.80665, within(1e-12));
    }

    @Test
    void aLowerStandardRelievesWithTheSquareOfThePitch() {
        StringSet known = new StringSet(
                328,
                440,
                List.of(new StringOrder("G3", new StringMass.LinearDensity(2.28))),
                new StringBreak.Angle(158));
        LoadChange change = new LoadChange(load(known), load(known.withA4_Hz(415)));
        assertThat(change.ratio()).isCloseTo(Math.pow(415.0 / 440, 2), within(1e-12));
        assertThat(change.tension().newton()).isNegative();
        assertThat(change.findDownforce().orElseThrow().newton())
                .isCloseTo(StringMechanics.downforce_N(change.tension().newton(), 158), within(1e-9));
    }

    @Test
    void heightsGiveAngleAndLean() {
        StringBreak heights = new StringBreak.Heights(55, 55 - 55 * Math.sin(Math.toRadians(14)), 55, 8);
        StringSetLoad load = load(new StringSet(328, 440, VIOLIN.strings(), heights));
        assertThat(heights.findStringAngle_deg().orElseThrow()).isCloseTo(158, within(1e-9));
        assertThat(load.findLean())
                .map(Angle::deg)
                .hasValueSatisfying(lean -> assertThat(lean).isCloseTo(3, within(1e-9)));
    }

    @Test
    void everythingWrongIsNamedAtOnce() {
        StringSet wrong = new StringSet(
                Double.NaN,
                44,
                List.of(
                        new StringOrder("H3", new StringMass.LinearDensity(0)),
                        new StringOrder("D4", new StringMass.Solid(-1, 10)),
                        new StringOrder("A4", new StringMass.FromTension(Double.POSITIVE_INFINITY))),
                new StringBreak.Angle(190));
        assertThat(((StringSetRefused) StringSetLoad.of(wrong)).problems())
                .extracting(Problem::at)
                .containsExactly(
                        "/speaking_length_mm",
                        "/a4_Hz",
                        "/strings/0/note",
                        "/strings/0/linear_density_g_m",
                        "/strings/1/diameter_mm",
                        "/strings/1/density_kg_m3",
                        "/strings/2/tension_N",
                        "/string_angle_deg");
    }

    @Test
    void aNoteThatCannotBeReadIsSaidSo() {
        StringSet wrong = new StringSet(
                328, 440, List.of(new StringOrder("H3", new StringMass.FromTension(50))), new StringBreak.Unknown());
        assertThat(((StringSetRefused) StringSetLoad.of(wrong)).problems())
                .extracting(Problem::message)
                .containsExactly(
                        "The note H3 cannot be read; it must be a letter from A to G, sharps or flats, and an octave from"
                                + " 0 to 9. Write it such as G3, C#4 or Bb2.");
    }

    @Test
    void aTailpieceAboveTheBridgePressesNothing() {
        StringSet wrong = new StringSet(328, 440, VIOLIN.strings(), new StringBreak.Heights(55, 60, 40, 8));
        assertThat(((StringSetRefused) StringSetLoad.of(wrong)).problems())
                .extracting(Problem::at)
                .containsExactly("/break/tail_height_mm");
    }
}
