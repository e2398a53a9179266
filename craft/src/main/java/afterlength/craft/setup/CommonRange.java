package afterlength.craft.setup;

/**
 * What most workshops would not be surprised at. Workshop conventions with real spread, never a standard: a value outside it is
 * a question to ask, not a fault.
 *
 * @param source heading in docs/sources.md
 */
public record CommonRange(double low, double high, String source) {
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
