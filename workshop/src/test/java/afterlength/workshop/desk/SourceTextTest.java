package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.SourceText.Block;
import afterlength.workshop.desk.SourceText.Face;
import afterlength.workshop.desk.SourceText.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class SourceTextTest {
    @Test
    void headingsParagraphsAndListsAreRead() {
        String text = """
                # Sources

                ## wood-handbook
                Author, *Title*, 2021. Used: `equation 4-5`
                over two lines.

                - first
                - second, which
                  goes on
                """;
        assertThat(SourceText.read(text))
                .containsExactly(
                        new Block.Heading(1, "Sources"),
                        new Block.Heading(2, "wood-handbook"),
                        new Block.Paragraph(List.of(
                                new Span(Face.PLAIN, "Author, "),
                                new Span(Face.EMPHASIS, "Title"),
                                new Span(Face.PLAIN, ", 2021. Used: "),
                                new Span(Face.CODE, "equation 4-5"),
                                new Span(Face.PLAIN, " over two lines."))),
                        new Block.Bullets(List.of(
                                List.of(new Span(Face.PLAIN, "first")),
                                List.of(new Span(Face.PLAIN, "second, which goes on")))));
    }

    @Test
    void aLoneStarOrBacktickStaysAsItIsWritten() {
        assertThat(SourceText.spans("2 * 3 is 6 and ` alone"))
                .containsExactly(new Span(Face.PLAIN, "2 * 3 is 6 and ` alone"));
    }
}
