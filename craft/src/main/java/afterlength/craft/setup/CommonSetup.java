package afterlength.craft.setup;

import java.util.Arrays;
import java.util.Optional;

/**
 * Ranges common in the trade. Which row applies is decided by the speaking length that was measured, not by a size name;
 * outside these lengths (children's sizes, basses) no range is stated because none with enough sources was found.
 */
public enum CommonSetup {
    /** Speaking lengths 317 to 331 mm; read, docs/sources.md#measured-strings and docs/sources.md#mayson. */
    VIOLIN(317, 331),
    /** Speaking lengths 345 to 392 mm; docs/sources.md#setup-common-practice. */
    VIOLA(345, 392),
    /** Speaking lengths 658 to 700 mm; read, docs/sources.md#measured-strings, and common practice. */
    CELLO(658, 700);

    private final double shortest_mm;
    private final double longest_mm;

    CommonSetup(double shortest_mm, double longest_mm) {
        this.shortest_mm = shortest_mm;
        this.longest_mm = longest_mm;
    }

    public static Optional<CommonSetup> find(double speakingLength_mm) {
        return Arrays.stream(values())
                .filter(row -> speakingLength_mm >= row.shortest_mm && speakingLength_mm <= row.longest_mm)
                .findFirst();
    }

    public Optional<CommonRange> find(SetupQuantity quantity) {
        return CommonRanges.find(this, quantity);
    }
}
