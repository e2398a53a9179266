package afterlength.workshop.handover;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasurePair;
import org.jspecify.annotations.Nullable;

/**
 * One quantity at handover and at the check.
 *
 * @param now null until it was measured again
 */
record CheckRow(Measure then, @Nullable Measure now) {
    /** From here on the air is mentioned, in points of relative humidity. Source: docs/sources.md#measuring-habits. */
    private static final double NOTEWORTHY_POINTS = 10;

    boolean measured() {
        return now != null;
    }

    String title() {
        return then.title();
    }

    String thenFigure() {
        return then.figure();
    }

    String nowFigure() {
        return now == null ? "" : now.figure();
    }

    /** “1.4 ± 0.3 mm more”, or that none can be told. */
    String difference() {
        return now == null ? "" : new MeasurePair(then, now).differenceWords();
    }

    /** That the two were measured in different air, when that is worth a word. */
    String airNote() {
        Double was = then.humidityPct();
        Double is = now == null ? null : now.humidityPct();
        if (was == null || is == null || Math.abs(is - was) <= NOTEWORTHY_POINTS) {
            return "";
        }
        return "Measured in air " + Figures.fixed(Math.abs(is - was), 0) + " points " + (is > was ? "damper" : "drier")
                + " than then; part of the difference may be the wood's.";
    }
}
