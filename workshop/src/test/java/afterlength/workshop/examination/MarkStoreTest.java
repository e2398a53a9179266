package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.workshop.desk.InstrumentView;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkStoreTest {
    private static final Instant LATER = Instant.parse("2026-03-03T10:00:00Z");
    private static final List<Pixel> LINE = List.of(new Pixel(10, 20), new Pixel(30.25, 40));

    @TempDir
    Path root;

    private ExaminedShop shop;
    private Photograph photograph;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        photograph = shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
    }

    private DrawnMark mark(
            @Nullable Long photographId, @Nullable InstrumentView view, MarkTool tool, List<Pixel> points) {
        return new DrawnMark(
                0,
                shop.visit.id(),
                null,
                false,
                photographId,
                view,
                null,
                tool,
                SvgSelector.of(tool, points),
                ArchHeight.TOP,
                null,
                42.1,
                0.4,
                null,
                null,
                "runs on",
                "M. Muster",
                ExaminedShop.NOW);
    }

    @Test
    void aMarkComesBackAsItWasDrawn() {
        long id = shop.marks.add(mark(photograph.id(), null, MarkTool.CRACK, LINE));
        DrawnMark kept = shop.marks.get(id);
        assertThat(kept.points()).isEqualTo(LINE);
        assertThat(kept.arch()).isEqualTo(ArchHeight.TOP);
        assertThat(kept.size().words()).isEqualTo("42.1 ± 0.4 mm");
        assertThat(shop.marks.listOnPhotograph(1, photograph.id())).containsExactly(kept);
        assertThat(shop.marks.listOnDrawing(1, InstrumentView.FRONT)).isEmpty();
    }

    @Test
    void theSelectorIsTheSvgOfTheStandard() {
        assertThat(SvgSelector.of(MarkTool.CRACK, LINE))
                .isEqualTo(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\"><polyline points=\"10,20 30.25,40\" fill=\"none\"/></svg>");
        List<Pixel> area = List.of(new Pixel(0, 0), new Pixel(9, 0), new Pixel(0, 9));
        assertThat(SvgSelector.points(SvgSelector.of(MarkTool.WORN, area))).isEqualTo(area);
        assertThat(SvgSelector.points(SvgSelector.of(MarkTool.POINT, LINE))).containsExactly(LINE.get(0));
    }

    @Test
    void aCorrectionReplacesAndTheEarlierFormStays() {
        long id = shop.marks.add(mark(photograph.id(), null, MarkTool.CRACK, LINE));
        DrawnMark longer = shop.marks.get(id).measured(new MarkSize(44.0, 0.4, null, null), id, LATER);
        assertThat(shop.marks.correct(longer)).isPresent();
        assertThat(shop.marks.correct(longer)).isEmpty();
        assertThat(shop.marks.listNow(1)).extracting(DrawnMark::sizeMm).containsExactly(44.0);
        assertThat(shop.marks.history(id).earlier())
                .extracting(DrawnMark::sizeMm)
                .containsExactly(42.1);
    }

    @Test
    void aWithdrawalCanBeTakenBack() {
        long id = shop.marks.add(mark(null, InstrumentView.BACK, MarkTool.POINT, LINE));
        shop.marks.withdraw(id, LATER);
        shop.marks.withdraw(id, LATER);
        assertThat(shop.marks.listNow(1)).isEmpty();
        shop.marks.bringBack(id, LATER);
        assertThat(shop.marks.listOnDrawing(1, InstrumentView.BACK)).hasSize(1);
        assertThat(shop.marks.history(id).entries()).hasSize(3);
    }

    @Test
    void theDatabaseKeepsTheHistory() {
        shop.marks.add(mark(photograph.id(), null, MarkTool.CRACK, LINE));
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("UPDATE mark SET tool = 'SEAM'")))
                .hasMessageContaining("history is kept: mark");
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("DELETE FROM mark")))
                .hasMessageContaining("history is kept: mark");
    }

    @Test
    void aMarkIsOnExactlyOnePicture() {
        assertThatThrownBy(() -> shop.marks.add(mark(null, null, MarkTool.CRACK, LINE)))
                .hasMessageContaining("CHECK constraint failed");
        assertThatThrownBy(() -> shop.marks.add(mark(photograph.id(), InstrumentView.SIDE, MarkTool.CRACK, LINE)))
                .hasMessageContaining("CHECK constraint failed");
    }

    @Test
    void theLastCheckLinesOfASheetHold() {
        long picture = photograph.id();
        assertThat(shop.cardPrints.print(Card.POCKET, picture).isChecked()).isFalse();
        shop.cardPrints.add(new CardPrint(0, Card.POCKET, 1, 99.0, 100.5, LATER));
        shop.cardPrints.add(new CardPrint(0, Card.POCKET, 1, 99.2, 100.4, LATER));
        assertThat(shop.cardPrints.print(Card.POCKET, picture).across()).isEqualTo(0.992);
        assertThat(shop.cardPrints.print(Card.BODY, picture).isChecked()).isFalse();
    }

    @Test
    void everyNumberedSheetHasItsOwnCheckLines() {
        long picture = photograph.id();
        shop.cardPrints.add(new CardPrint(0, Card.POCKET, 1, 99.0, 100.5, LATER));
        shop.cardPrints.add(new CardPrint(0, Card.POCKET, 2, 101.0, 101.0, LATER));
        assertThat(shop.cardPrints.print(Card.POCKET, picture).across()).isEqualTo(1.01);
        shop.cardPrints.putNumber(picture, 1, LATER);
        assertThat(shop.cardPrints.print(Card.POCKET, picture).across()).isEqualTo(0.99);
        shop.cardPrints.putNumber(picture, 3, LATER);
        assertThat(shop.cardPrints.print(Card.POCKET, picture).isChecked()).isFalse();
        assertThat(shop.cardPrints.list()).extracting(CardPrint::number).containsExactly(1, 2);
    }
}
