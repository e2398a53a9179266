package afterlength.workshop.examination;

import java.time.Instant;

/**
 * A picture of an instrument during one visit. The file itself is named by its SHA-256 and is never altered.
 *
 * @param widthPx width of the picture as it is seen upright, after the turn that the camera noted
 * @param heightPx height of the picture as it is seen upright
 * @param view what is seen: "front", "scroll", "detail"
 * @param putAway taken out of view, not out of the shop
 */
public record Photograph(
        long id,
        long visitId,
        String sha256,
        String mediaType,
        int widthPx,
        int heightPx,
        Moment moment,
        String view,
        String caption,
        Instant addedAt,
        boolean putAway) {

    /** Where the original is served; the digits of its name let a browser keep it without ever showing another one. */
    public String address() {
        return "/photographs/" + id + "?name=" + shortName();
    }

    /** Where the small, upright picture without camera data is served. */
    public String smallAddress() {
        return "/photographs/" + id + "/small?name=" + shortName();
    }

    /** "front, before work"; "picture 12, before work" when nobody said what is seen. */
    public String title() {
        return (view.isEmpty() ? "picture " + id : view) + ", " + moment.words();
    }

    /** What a person who does not see the picture is told. */
    public String spoken() {
        return caption.isEmpty() ? title() : title() + ": " + caption;
    }

    String shortName() {
        return sha256.substring(0, 16);
    }
}
