package afterlength.bench;

import java.util.function.DoubleSupplier;

/**
 * A job and the slow way to the same answer.
 *
 * @param calls measured of the job; the slow way is measured over {@code slowCalls}
 * @param close how near both answers must lie to each other, so that no ratio is printed of two different things
 */
record Job(String name, DoubleSupplier quick, DoubleSupplier slow, int calls, int slowCalls, double close) {
    void requireSameAnswer() {
        double one = quick.getAsDouble();
        double other = slow.getAsDouble();
        if (!(Math.abs(one - other) <= close)) {
            throw new IllegalStateException(
                    name + ": " + one + " and the slow way " + other + " differ by more than " + close);
        }
    }
}
