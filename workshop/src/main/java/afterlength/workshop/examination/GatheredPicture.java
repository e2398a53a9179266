package afterlength.workshop.examination;

import afterlength.sight.measure.CardPicture;
import org.jspecify.annotations.Nullable;

/**
 * A picture that was brought for a calibration.
 *
 * @param seen what its card tells of its camera; null while it is looked at, and when it is of no use
 * @param reason why it is of no use, or an empty text
 */
record GatheredPicture(
        long id, String name, String sha256, @Nullable CardPicture seen, String reason) {
    static GatheredPicture waiting(long id, String name, String sha256) {
        return new GatheredPicture(id, name, sha256, null, "");
    }

    GatheredPicture seen(CardPicture picture) {
        return new GatheredPicture(id, name, sha256, picture, "");
    }

    GatheredPicture refused(String why) {
        return new GatheredPicture(id, name, sha256, null, why);
    }

    boolean isWaiting() {
        return seen == null && reason.isEmpty();
    }

    int corners() {
        return seen == null ? 0 : seen.asLaid().size();
    }
}
