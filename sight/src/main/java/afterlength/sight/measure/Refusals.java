package afterlength.sight.measure;

import afterlength.sight.card.Card;
import java.util.Locale;

/** Why a photograph is not measured in, and what to do. One place for all these sentences. */
final class Refusals {
    private static final String AGAIN = " and take the picture again.";

    private Refusals() {}

    static String noCard() {
        return "No card was found in the picture. Lay a printed body card or pocket card flat and wholly into the picture"
                + AGAIN;
    }

    static String anotherCard(String wanted, Card found) {
        return "The picture shows a " + found.word() + " card; a " + wanted
                + " card was named. Name the card that lies in the" + " picture.";
    }

    static String blurredAltogether() {
        return "The picture is blurred: a card shows, but its squares cannot be read. Rest the camera, let it focus on the card"
                + AGAIN;
    }

    static String blurred(double softness_px) {
        return String.format(
                        Locale.ROOT,
                        "The picture is blurred: edges spread over %.1f pixels, and at most %.1f are measured with. Rest the"
                                + " camera, let it focus on the card",
                        softness_px,
                        PhotoMeasuring.SOFTEST_PX)
                + AGAIN;
    }

    static String tooFew(int corners) {
        return "Only " + corners + " corners of the card were read; " + PhotoMeasuring.FEWEST_CORNERS
                + " are needed. Uncover the card, avoid glare on it, go nearer" + AGAIN;
    }

    static String cut(long outside, int all) {
        return "The card is cut by the edge of the picture: " + outside + " of its " + all
                + " corners lie outside. Bring the whole card into the picture" + AGAIN;
    }

    static String residual(double residual_px) {
        return String.format(
                        Locale.ROOT,
                        "The corners of the card lie %.2f pixels beside where a flat card would show them; at most %.1f are"
                                + " measured with. Lay the card flat",
                        residual_px,
                        PhotoMeasuring.LARGEST_RESIDUAL_PX)
                + AGAIN;
    }
}
