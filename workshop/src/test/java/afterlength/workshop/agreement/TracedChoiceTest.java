package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.geometry.Point;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.MarkTool;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Photograph;
import afterlength.workshop.examination.TracedMark;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TracedChoiceTest {
    private static final List<TracedMark> MARKS = List.of(
            mark(1, MarkTool.OUTLINE, 7, Point.of(0, 0), Point.of(12, 0), Point.of(12, 60.123)),
            mark(2, MarkTool.CRACK, 7, Point.of(26, 5), Point.of(26, 55)),
            mark(3, MarkTool.CRACK, 8, Point.of(1, 1), Point.of(2, 9)),
            mark(4, MarkTool.POINT, 7, Point.of(26, 30)));

    private static TracedMark mark(long id, MarkTool tool, long photograph, Point... places) {
        Photograph on = new Photograph(
                photograph, 1, "a".repeat(64), "image/jpeg", 4000, 3000, Moment.BEFORE, "", "", Instant.EPOCH, false);
        return new TracedMark(id, tool, on, "mark " + id, 8, List.of(places));
    }

    @Test
    void marksOfOnePhotographAreTakenWithTheirHeight() {
        Typed taken = TracedChoice.taken(Typed.known(Map.of("outline_mark", "1", "crack_mark", "2")), MARKS);
        assertThat(taken.sound()).isTrue();
        assertThat(taken.raw("outline")).isEqualTo("0 0\n12 0\n12 60.12");
        assertThat(taken.raw("crack")).isEqualTo("26 5\n26 55");
        assertThat(taken.raw("photograph")).isEqualTo("7");
        assertThat(taken.raw("photograph_height_mm")).isEqualTo("8");
    }

    @Test
    void marksOfTwoPhotographsAreRefused() {
        Typed typed = TracedChoice.taken(Typed.known(Map.of("outline_mark", "1", "crack_mark", "3")), MARKS);
        assertThat(typed.problem("outline_mark"))
                .contains(
                        "The chosen marks lie on different photographs (picture 7, before work; picture 8, before work), and each"
                                + " counts from its own card. Trace hole and crack in one photograph.");
    }

    @Test
    void thePostIsTakenOnlyToAHoleOfTheSamePhotograph() {
        assertThat(TracedChoice.taken(Typed.known(Map.of("post_mark", "4")), MARKS)
                        .sound())
                .isFalse();
        Typed taken = TracedChoice.taken(Typed.known(Map.of("post_mark", "4", "photograph", "7")), MARKS);
        assertThat(taken.sound()).isTrue();
        assertThat(taken.raw("post")).isEqualTo("26 30");
    }

    @Test
    void nothingChosenIsSaid() {
        assertThat(TracedChoice.taken(Typed.known(Map.of()), MARKS).problem("outline_mark"))
                .contains("No mark is chosen. Choose the traced hole and the traced crack.");
    }
}
