package afterlength.sight.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardTest {
    private static final double ROUNDING_MM = 1e-9;

    @ParameterizedTest
    @EnumSource
    void everyCornerLiesWhereFourBlackOrWhiteSquaresMeet(Card card) {
        for (Corner corner : card.corners()) {
            long black = card.squares().stream()
                    .filter(square -> square.width_mm() > 4 && square.height_mm() > 4)
                    .filter(square -> touches(square, corner.place()))
                    .count();
            assertThat(black).as("%s %s", card, corner).isEqualTo(2);
        }
    }

    private static boolean touches(Rectangle square, Point at) {
        boolean level = Math.abs(square.left_mm() - at.x_mm()) < ROUNDING_MM
                || Math.abs(square.left_mm() + square.width_mm() - at.x_mm()) < ROUNDING_MM;
        boolean upright = Math.abs(square.top_mm() - at.y_mm()) < ROUNDING_MM
                || Math.abs(square.top_mm() + square.height_mm() - at.y_mm()) < ROUNDING_MM;
        return level && upright;
    }

    @ParameterizedTest
    @EnumSource
    void everythingLiesOnTheCard(Card card) {
        card.squares().forEach(square -> assertOnCard(card, square));
        card.patches().forEach(patch -> assertOnCard(card, patch.place()));
        card.rule()
                .forEach(tick -> assertThat(card.height_mm() - tick.to().y_mm()).isPositive());
    }

    private static void assertOnCard(Card card, Rectangle place) {
        assertThat(place.left_mm()).isGreaterThanOrEqualTo(4);
        assertThat(place.top_mm()).isGreaterThanOrEqualTo(2);
        double right_mm = place.left_mm() + place.width_mm();
        double bottom_mm = place.top_mm() + place.height_mm();
        assertThat(right_mm).isLessThanOrEqualTo(card.width_mm() - 2);
        assertThat(bottom_mm).isLessThanOrEqualTo(card.height_mm() - 1);
        if (card.isBody()) {
            assertThat(right_mm <= Card.ARM_MM || place.top_mm() >= card.height_mm() - Card.ARM_MM)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void bothCheckLinesAreAHundredMillimetresLong(Card card) {
        assertThat(card.checkLines())
                .hasSize(2)
                .allSatisfy(
                        line -> assertThat(line.from().distanceTo_mm(line.to())).isCloseTo(100, within(ROUNDING_MM)));
    }

    @ParameterizedTest
    @EnumSource
    void theFirstSixPatchesAreGreyAndNoTwoTouch(Card card) {
        List<Patch> patches = card.patches();
        assertThat(patches).hasSize(18);
        assertThat(patches.subList(0, 6)).allMatch(Patch::isGrey);
        assertThat(patches.subList(6, 18)).noneMatch(Patch::isGrey);
        assertThat(patches.stream().map(Patch::place).distinct()).hasSize(18);
    }

    @Test
    void everyBoardIsKnownByItsNumber() {
        assertThat(Boards.findCard(0)).contains(Card.BODY);
        assertThat(Boards.findCard(3)).contains(Card.BODY_LETTER);
        assertThat(Boards.findCard(4)).contains(Card.POCKET);
        assertThat(Boards.findCard(5)).isEmpty();
    }
}
