package afterlength.sight.card;

import boofcv.alg.drawing.FiducialRenderEngine;
import boofcv.alg.fiducial.calib.ecocheck.ECoCheckGenerator;
import boofcv.alg.fiducial.calib.ecocheck.ECoCheckUtils;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_F64;
import java.util.ArrayList;
import java.util.List;

/** Asks the vision library to draw one board and writes down every rectangle it draws, in the place it has on the card. */
final class BoardSquares extends FiducialRenderEngine {
    private final Board board;
    private final List<Rectangle> squares = new ArrayList<>();

    private BoardSquares(Board board) {
        this.board = board;
    }

    static List<Rectangle> of(Board board) {
        ECoCheckUtils code = new ECoCheckUtils();
        code.setParametersFromConfig(Boards.markers());
        code.fixate();
        BoardSquares pen = new BoardSquares(board);
        ECoCheckGenerator generator = new ECoCheckGenerator(code);
        generator.setSquareWidth(Board.SQUARE_MM);
        generator.setRender(pen);
        generator.render(board.number());
        return List.copyOf(pen.squares);
    }

    @Override
    public void init() {
        squares.clear();
    }

    @Override
    public void setGray(double value) {
        if (value != 0) {
            throw new IllegalStateException("the board is drawn in black alone, and was asked for grey " + value);
        }
    }

    @Override
    public void rectangle(double x0, double y0, double x1, double y1) {
        squares.add(Rectangle.between(board.onCard(x0, y0), board.onCard(x1, y1)));
    }

    @Override
    public void square(double x, double y, double width) {
        rectangle(x, y, x + width, y + width);
    }

    @Override
    public void square(double x, double y, double width, double thickness) {
        throw notOnABoard("a frame");
    }

    @Override
    public void circle(double x, double y, double radius) {
        throw notOnABoard("a circle");
    }

    @Override
    public void draw(GrayU8 image, double x0, double y0, double x1, double y1) {
        throw notOnABoard("a picture");
    }

    @Override
    public void inputToDocument(double x, double y, Point2D_F64 document) {
        document.setTo(x, y);
    }

    private static IllegalStateException notOnABoard(String what) {
        return new IllegalStateException("a board has squares only, and was asked to draw " + what);
    }
}
