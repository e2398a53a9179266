package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LetteringTest {
    @Test
    void figuresAreAllOfOneWidthSoThatColumnsStand() {
        for (Face face : new Face[] {Face.SANS, Face.SANS_STRONG, Face.SERIF, Face.SERIF_STRONG}) {
            for (char figure = '1'; figure <= '9'; figure++) {
                assertThat(Lettering.width_mm(face, String.valueOf(figure), 10))
                        .as("%s %s", face, figure)
                        .isCloseTo(Lettering.width_mm(face, "0", 10), within(1e-9));
            }
        }
    }

    @Test
    void aSignTheFaceLacksIsBorrowed() {
        assertThat(Lettering.spell(Face.SERIF, "B♭ a"))
                .containsExactly(
                        new Lettering.Run(Face.SERIF, "B"),
                        new Lettering.Run(Face.SYMBOLS, "♭"),
                        new Lettering.Run(Face.SERIF, " a"));
    }

    @Test
    void anAccentWrittenApartIsJoinedToItsLetter() {
        assertThat(Lettering.writable(Face.SANS, "u\u0308ber")).isEqualTo("über");
    }

    @Test
    void wordsAreBrokenToAWidth() {
        TextBlock block =
                TextBlock.set("Measure these rules before you cut", new Point(0, 0), 20, 3, Face.SANS, Ink.INK);
        assertThat(block.lines()).extracting(Words::words).containsExactly("Measure these", "rules before", "you cut");
        assertThat(block.lines()).allMatch(line -> line.width_mm() <= 20);
        assertThat(block.height_mm()).isCloseTo(3 * 3 * 1.32, within(1e-9));
    }
}
