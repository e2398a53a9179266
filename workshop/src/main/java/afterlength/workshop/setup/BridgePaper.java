package afterlength.workshop.setup;

import afterlength.craft.units.Length;
import afterlength.workshop.paper.PaperSize;
import org.jspecify.annotations.Nullable;

/**
 * What a bridge sheet says beside the shape.
 *
 * @param instrument which instrument it is for
 * @param date when it was drawn, in words
 * @param drawnBy the program and its version
 * @param footSpan over the outer edges of both feet, or null when it was not measured
 */
public record BridgePaper(
        String instrument,
        String date,
        String drawnBy,
        PaperSize size,
        @Nullable Length footSpan) {}
