/**
 * How long the arithmetic takes, measured by hand and never in a test: each job beside the slow second way of the tests, in the same
 * run, so that the ratio means something on any machine. Figures of one run: docs/performance.md.
 */
@NullMarked
package afterlength.bench;

import org.jspecify.annotations.NullMarked;
