package afterlength.workshop.agreement;

/** Hours that follow a step's handwork while glue, varnish or wood are left alone: least, usual, most. */
public record Wait(double low_h, double typical_h, double high_h) {
    public Wait {
        if (!(0 <= low_h && low_h <= typical_h && typical_h <= high_h && high_h < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a wait is " + low_h + " / " + typical_h + " / " + high_h
                    + " h; allowed is least ≤ usual ≤ most, none below 0");
        }
    }
}
