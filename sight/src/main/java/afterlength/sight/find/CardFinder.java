package afterlength.sight.find;

import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Board;
import afterlength.sight.card.Boards;
import afterlength.sight.card.Card;
import afterlength.sight.card.Corner;
import boofcv.abst.fiducial.calib.ConfigECoCheckDetector;
import boofcv.alg.fiducial.calib.ecocheck.ECoCheckDetector;
import boofcv.alg.fiducial.calib.ecocheck.ECoCheckFound;
import boofcv.alg.filter.misc.AverageDownSampleOps;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.geo.PointIndex2D_F64;
import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for the corners of our cards in a picture. The corners between four squares stay where they are when a print is fat or
 * a picture soft, unlike edges, which every blur moves. The library counts pixels as we do, centres at one half.
 */
public final class CardFinder {
    private static final int SMALLER = 4;

    /** Two rows of six: less could be chance. */
    private static final int BOARD_CORNERS = 12;

    /** Nothing can be read in less, and the library wants a few pixels to start from. */
    private static final int LEAST_PX = 60;

    private final ECoCheckDetector<GrayU8> detector = FactoryFiducial.ecocheck(
                    new ConfigECoCheckDetector(), Boards.markers(), GrayU8.class)
            .getDetector();

    private CardFinder() {}

    /** Every card of which at least one corner was read, the one with most corners first. */
    public static List<FoundCard> find(BufferedImage picture) {
        boolean tiny = Math.min(picture.getWidth(), picture.getHeight()) < LEAST_PX;
        return tiny ? List.of() : new CardFinder().find(GreyPicture.of(picture));
    }

    /**
     * Whether a chessboard shows in the picture made four times smaller, in which a blur is four times less, even if its squares
     * carry nothing that can be read. To be asked only when no card was found, to tell a blurred picture from one without.
     */
    public static boolean findsBlurred(BufferedImage picture) {
        GrayU8 grey = GreyPicture.of(picture);
        GrayU8 small = new GrayU8(grey.width / SMALLER, grey.height / SMALLER);
        if (Math.min(small.width, small.height) < LEAST_PX) {
            return false;
        }
        AverageDownSampleOps.down(grey, small);
        CardFinder finder = new CardFinder();
        finder.detector.process(small);
        return finder.detector.getFound().toList().stream().anyMatch(board -> board.corners.size() >= BOARD_CORNERS);
    }

    private List<FoundCard> find(GrayU8 grey) {
        detector.process(grey);
        Map<Card, List<FoundCorner>> byCard = new EnumMap<>(Card.class);
        for (ECoCheckFound found :
                detector.getUtils().mergeAndRemoveUnknown(detector.getFound().toList())) {
            Boards.findCard(found.markerID)
                    .ifPresent(card -> byCard.computeIfAbsent(card, any -> new ArrayList<>())
                            .addAll(corners(card, found)));
        }
        return byCard.entrySet().stream()
                .map(entry -> new FoundCard(entry.getKey(), entry.getValue(), Softness.find_px(grey, entry.getValue())))
                .sorted((one, other) ->
                        Integer.compare(other.corners().size(), one.corners().size()))
                .toList();
    }

    private static List<FoundCorner> corners(Card card, ECoCheckFound found) {
        Board board = card.boards().stream()
                .filter(one -> one.number() == found.markerID)
                .findFirst()
                .orElseThrow();
        List<FoundCorner> corners = new ArrayList<>();
        for (int n = 0; n < found.corners.size(); n++) {
            PointIndex2D_F64 seen = found.corners.get(n);
            Corner corner = new Corner(board.number(), seen.index, board.corner(seen.index));
            corners.add(new FoundCorner(corner, new Pixel(seen.p.x, seen.p.y), found.touchBinary.get(n)));
        }
        return corners;
    }
}
