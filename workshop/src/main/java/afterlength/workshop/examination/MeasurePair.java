package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;

/**
 * The same quantity before and after work. The ± of the difference is √(u₁² + u₂²), which holds when the two errors have nothing
 * to do with each other; an error that both share, such as a rule that is off throughout, drops out and makes the difference
 * better than told. Left out: what the wood does between two climates; {@link #airNote} says when that may matter.
 */
public record MeasurePair(Measure before, Measure after) {
    /** From here on the air is mentioned, in points of relative humidity. Source: docs/sources.md#measuring-habits. */
    static final double NOTEWORTHY_POINTS = 10;

    public MeasurePair {
        if (!before.kind().equals(after.kind())) {
            throw new IllegalArgumentException(before.kind() + " cannot be compared with " + after.kind());
        }
    }

    public String title() {
        return before.title();
    }

    /** After less before. */
    public double difference() {
        return after.value() - before.value();
    }

    public double differencePlusMinus() {
        return Math.hypot(before.plusMinus(), after.plusMinus());
    }

    /** Whether the difference is larger than its own ±. */
    public boolean differs() {
        return Math.abs(difference()) > differencePlusMinus();
    }

    /** "1.4 ± 0.3 mm more", or that none can be told. */
    public String differenceWords() {
        String amount = Figures.plusMinus(Math.abs(difference()), differencePlusMinus(), before.unit());
        if (!differs()) {
            return "none that ± " + Figures.fixed(differencePlusMinus(), decimals()) + " " + before.unit()
                    + " can show";
        }
        return amount + (difference() > 0 ? " more" : " less");
    }

    private int decimals() {
        return differencePlusMinus() >= 0.095 ? 1 : 2;
    }

    /** That the two were measured in different air, when the difference of humidity is worth a word; else nothing. */
    public String airNote() {
        Double was = before.humidityPct();
        Double is = after.humidityPct();
        if (was == null || is == null || Math.abs(is - was) <= NOTEWORTHY_POINTS) {
            return "";
        }
        return "Measured in air " + Figures.fixed(Math.abs(is - was), 0) + " points " + (is > was ? "damper" : "drier")
                + " than before work; part of the difference may be the wood's.";
    }
}
