package afterlength.craft.access;

/** A stretch of a line, possibly without an end on either side. */
record Span(double low, double high) {
    static final Span EVERYWHERE = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    boolean isEmpty() {
        return !(low <= high);
    }

    Span and(Span other) {
        return new Span(Math.max(low, other.low), Math.min(high, other.high));
    }

    double nearestTo(double value) {
        return Math.max(low, Math.min(high, value));
    }

    double middleOr(double value) {
        double middle = (low + high) / 2;
        return Double.isFinite(middle) ? middle : nearestTo(value);
    }
}
