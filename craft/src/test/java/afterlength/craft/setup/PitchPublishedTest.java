package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal temperament at A440: semitones from A4 are exact, so are octaves of 440. */
class PitchPublishedTest {
    @ParameterizedTest
    @CsvSource({
        "A4, 0",
        "G3, -14",
        "D4, -7",
        "E5, 7",
        "C4, -9",
        "C2, -33",
        "C#4, -8",
        "C♯4, -8",
        "Db4, -8",
        "B♭2, -23",
        "Bb2, -23",
        "bb2, -23",
        "Cb4, -10",
        "B#3, -9",
        "F##3, -14",
        "Abb3, -14",
        "A0, -48",
        "E1, -41",
        "c-1, -69"
    })
    void notesAreRead(String name, int semitones) {
        assertThat(Pitch.find(name)).contains(new Pitch(semitones));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H3", "G", "4", "G#b3", "G33", "Gis3", "G 3"})
    void whatIsNoNoteIsNotGuessed(String name) {
        assertThat(Pitch.find(name)).isEmpty();
    }

    @Test
    void octavesDoubleAndTheReferenceStands() {
        assertThat(new Pitch(-24).frequency(440).hertz()).isCloseTo(110, within(1e-10));
        assertThat(new Pitch(0).frequency(415).hertz()).isEqualTo(415);
        // C4 = 440 · 2^(-9/12), printed everywhere as 261.63
        assertThat(new Pitch(-9).frequency(440).hertz()).isCloseTo(261.63, within(0.005));
    }
}
