package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** The clamps on the shelf. */
record ClampsPage(Frame frame, List<ShopClamp> clamps, Typed typed) {
    static String words(ShopClamp clamp) {
        return "throat " + Figures.plain(clamp.throatMm()) + " mm, jaw " + Figures.plain(clamp.jawLengthMm()) + " × "
                + Figures.plain(clamp.jawWidthMm()) + " × " + Figures.plain(clamp.jawHeightMm()) + " mm, arm "
                + Figures.plain(clamp.armMm()) + " × " + Figures.plain(clamp.armWidthMm()) + " mm";
    }
}
