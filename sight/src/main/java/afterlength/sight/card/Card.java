package afterlength.sight.card;

import afterlength.craft.geometry.Point;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The cards the program prints. A body card is an L cut out of one sheet, so that a whole body lies between its arms: only
 * corners far apart keep a length of a third of a metre true (docs/sources.md#photo-study). It is 280 mm long on A4 and 258 mm on
 * Letter, which is a shorter sheet; the two carry different numbers in their squares and are told apart in the picture. The
 * pocket card lies beside a finding and serves some 10 to 15 cm around it.
 */
public enum Card {
    BODY("body", List.of(Board.upright(0, 28, 6, 3), Board.level(1, 17, 36, 256)), 190, 280),
    BODY_LETTER("body", List.of(Board.upright(2, 26, 6, 3), Board.level(3, 17, 36, 234)), 190, 258),
    POCKET("pocket", List.of(Board.of(4, 9, 6, 7, 4)), 60, 90);

    /** Breadth of the arms of the L. */
    public static final double ARM_MM = 30;

    private final String word;
    /** Immutable, though its type does not say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Board> boards;

    private final double width_mm;
    private final double height_mm;

    Card(String word, List<Board> boards, double width_mm, double height_mm) {
        this.word = word;
        this.boards = boards;
        this.width_mm = width_mm;
        this.height_mm = height_mm;
    }

    /** What a document calls it; both body cards go by one word. */
    public String word() {
        return word;
    }

    public double width_mm() {
        return width_mm;
    }

    public double height_mm() {
        return height_mm;
    }

    public double longestSide_mm() {
        return Math.max(width_mm, height_mm);
    }

    public boolean isBody() {
        return this != POCKET;
    }

    public List<Board> boards() {
        return boards;
    }

    /** Where to cut, as a closed outline. */
    public List<Point> outline() {
        if (!isBody()) {
            return List.of(at(0, 0), at(width_mm, 0), at(width_mm, height_mm), at(0, height_mm));
        }
        double inner_mm = height_mm - ARM_MM;
        return List.of(
                at(0, 0),
                at(ARM_MM, 0),
                at(ARM_MM, inner_mm),
                at(width_mm, inner_mm),
                at(width_mm, height_mm),
                at(0, height_mm));
    }

    /** Everything black on the card that the finder reads. */
    public List<Rectangle> squares() {
        return boards.stream().flatMap(board -> BoardSquares.of(board).stream()).toList();
    }

    public List<Corner> corners() {
        return boards.stream().flatMap(Card::corners).toList();
    }

    public int cornerCount() {
        return boards.stream().mapToInt(Board::cornerCount).sum();
    }

    public List<Patch> patches() {
        return isBody() ? Patch.block(at(5, height_mm - 27), 4) : Patch.block(at(7, 78.5), 9);
    }

    /** The millimetre rule: ticks from the left edge inwards, one a millimetre, the first at the top of the card. */
    public List<Segment> rule() {
        int last_mm = isBody() ? 240 : 80;
        return IntStream.rangeClosed(0, last_mm)
                .mapToObj(mm -> tick(RULE_FROM_MM + mm, mm))
                .toList();
    }

    /** Where the rule begins, below the upper edge of the card. */
    public static final double RULE_FROM_MM = 4;

    private static Segment tick(double y_mm, int mm) {
        double length_mm = mm % 10 == 0 ? 3.5 : mm % 5 == 0 ? 2.5 : 1.5;
        return new Segment(at(0.5, y_mm), at(0.5 + length_mm, y_mm));
    }

    /**
     * Two lines of 100 mm, along and across, to be measured on the print; a printer may scale both differently. On a body card
     * they lie on the card, beside the pocket card on its sheet.
     */
    public List<Segment> checkLines() {
        if (isBody()) {
            double y_mm = height_mm - ARM_MM + 2;
            return List.of(new Segment(at(60, y_mm), at(160, y_mm)), new Segment(at(28, 60), at(28, 160)));
        }
        return List.of(new Segment(at(0, 100), at(100, 100)), new Segment(at(70, 0), at(70, 100)));
    }

    private static Stream<Corner> corners(Board board) {
        return IntStream.range(0, board.cornerCount()).mapToObj(n -> new Corner(board.number(), n, board.corner(n)));
    }

    private static Point at(double x_mm, double y_mm) {
        return Point.of(x_mm, y_mm);
    }
}
