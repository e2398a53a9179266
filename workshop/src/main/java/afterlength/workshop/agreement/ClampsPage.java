package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The clamps on the shelf.
 *
 * @param changing the one whose measures stand in the form, or null for another one
 */
record ClampsPage(
        Frame frame,
        List<ShopClamp> clamps,
        Typed typed,
        @Nullable ShopClamp changing) {
    String address() {
        return changing == null ? "/shelf/clamps" : "/shelf/clamps/" + changing.id();
    }

    static String words(ShopClamp clamp) {
        return "throat " + Figures.plain(clamp.throatMm()) + " mm, jaw " + Figures.plain(clamp.jawLengthMm()) + " × "
                + Figures.plain(clamp.jawWidthMm()) + " × " + Figures.plain(clamp.jawHeightMm()) + " mm, arm "
                + Figures.plain(clamp.armMm()) + " × " + Figures.plain(clamp.armWidthMm()) + " mm";
    }
}
