package afterlength.workshop.examination;

import org.jspecify.annotations.Nullable;

/**
 * A mark as its page shows it.
 *
 * @param finding the wording that holds of the finding it belongs to, or null
 * @param now what it measures as the picture is solved now; nothing while it is not
 */
record MarkEntry(DrawnMark mark, @Nullable Finding finding, MarkSize now) {

    /** What was kept with the mark, or what it measures now. */
    MarkSize size() {
        return mark.size().known() ? mark.size() : now;
    }

    String sizeWords() {
        return size().words();
    }

    /** It was drawn before the card was found, or the card was measured since. */
    boolean offersKeeping() {
        return now.known() && !now.words().equals(mark.size().words());
    }

    /** Only a length is the size of a finding. */
    boolean offersTakingOver() {
        return finding != null && size().known() && !size().lengthWords().equals(FindingEntry.size(finding));
    }

    /** "Take 42.1 ± 0.4 mm into wing crack, top". */
    String takingOverWords() {
        return finding == null ? "" : "Take " + size().lengthWords() + " into the finding";
    }

    /** A measured line along a template or a bridge can go to the set-up. */
    boolean offersCrown() {
        return now.known() && mark.tool() == MarkTool.SEAM;
    }

    boolean hasOutline() {
        return mark.tool() != MarkTool.POINT;
    }

    /** For the drawing layer: "10,20 30,40". */
    String svgPoints() {
        return SvgSelector.text(mark.points());
    }
}
