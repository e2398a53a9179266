package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.sight.measure.Height;
import afterlength.sight.measure.MarkKind;
import afterlength.workshop.desk.InstrumentView;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something drawn on a photograph or on our own drawing of the instrument.
 *
 * @param selector the SVG element of a W3C Web Annotation, in pixels of the upright picture or in units of the drawing
 * @param heightMm typed height over the card, which holds instead of the class
 * @param sizeMm length of a line, longest extent of an area; there only when it was measured
 */
public record DrawnMark(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        @Nullable Long photographId,
        @Nullable InstrumentView drawing,
        @Nullable Long findingId,
        MarkTool tool,
        String selector,
        ArchHeight arch,
        @Nullable Double heightMm,
        @Nullable Double sizeMm,
        @Nullable Double sizePlusMinusMm,
        @Nullable Double areaMm2,
        @Nullable Double areaPlusMinusMm2,
        String remark,
        String hand,
        Instant writtenAt)
        implements Written {

    /** The points in the order in which they were set. */
    public List<Pixel> points() {
        return SvgSelector.points(selector);
    }

    /** Its height over the card, as chosen or typed. */
    public Height height() {
        return arch.height(heightMm);
    }

    /** A line that a photograph shows, and not our own drawing. */
    public boolean isLineOnPhotograph() {
        return photographId != null && tool.kind() == MarkKind.LINE;
    }

    /** The page of the picture it is drawn on. */
    String page() {
        return drawing == null
                ? "/photographs/" + photographId + "/marks"
                : "/visits/" + visitId + "/drawings/" + DrawingGround.word(drawing);
    }

    /** "crack line 3, 42.1 ± 0.4 mm". */
    String about() {
        return size().known() ? title() + ", " + size().words() : title();
    }

    /** "crack line 3". */
    public String title() {
        return tool.words() + " " + id;
    }

    /** The same mark as a new entry that replaces an earlier one. */
    DrawnMark again(long replaced, boolean nowWithdrawn, Instant at) {
        return entry(replaced, nowWithdrawn, new MarkSize(sizeMm, sizePlusMinusMm, areaMm2, areaPlusMinusMm2), at);
    }

    /** The same mark with what it measures. */
    DrawnMark measured(MarkSize size, @Nullable Long replaced, Instant at) {
        return entry(replaced, withdrawn, size, at);
    }

    private DrawnMark entry(@Nullable Long replaced, boolean nowWithdrawn, MarkSize size, Instant at) {
        return new DrawnMark(
                0,
                visitId,
                replaced,
                nowWithdrawn,
                photographId,
                drawing,
                findingId,
                tool,
                selector,
                arch,
                heightMm,
                size.size_mm(),
                size.plusMinus_mm(),
                size.area_mm2(),
                size.areaPlusMinus_mm2(),
                remark,
                hand,
                at);
    }

    MarkSize size() {
        return new MarkSize(sizeMm, sizePlusMinusMm, areaMm2, areaPlusMinusMm2);
    }
}
