package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Pictures in rows of a few. A paper keeps each row on one page ({@code div.picturerow}); pictures that only flow beside each other
 * may be torn apart at the end of a page, the tall ones above and the low ones below.
 */
public final class PictureRows {
    private PictureRows() {}

    public static <T> List<List<T>> of(List<T> pictures, int inARow) {
        List<List<T>> rows = new ArrayList<>();
        for (int from = 0; from < pictures.size(); from += inARow) {
            rows.add(pictures.subList(from, Math.min(pictures.size(), from + inARow)));
        }
        return rows;
    }
}
