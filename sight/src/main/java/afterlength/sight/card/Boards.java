package afterlength.sight.card;

import boofcv.abst.fiducial.calib.ConfigECoCheckMarkers;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** All boards together, as the vision library wants to know them: what a square carries depends on how many boards there are. */
public final class Boards {
    private static final List<Board> ALL = Arrays.stream(Card.values())
            .flatMap(card -> card.boards().stream())
            .sorted(Comparator.comparingInt(Board::number))
            .toList();

    private Boards() {}

    public static ConfigECoCheckMarkers markers() {
        ConfigECoCheckMarkers markers = new ConfigECoCheckMarkers();
        ALL.forEach(board -> markers.markerShapes.add(
                new ConfigECoCheckMarkers.MarkerShape(board.rows(), board.columns(), Board.SQUARE_MM)));
        return markers;
    }

    /** The card that carries the board with this number. */
    public static Optional<Card> findCard(int number) {
        return Arrays.stream(Card.values())
                .filter(card -> card.boards().stream().anyMatch(board -> board.number() == number))
                .findFirst();
    }

    static Board get(int number) {
        return ALL.get(number);
    }
}
