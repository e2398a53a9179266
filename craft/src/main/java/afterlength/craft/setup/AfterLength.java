package afterlength.craft.setup;

import afterlength.craft.units.Length;

/**
 * The length of string between bridge and tailpiece fret that two printed rules give. Both are references, neither a law: measured
 * instruments hold either and neither. Source: docs/sources.md#after-length-rule.
 *
 * @param sixth a sixth of the speaking length, which sounds two octaves and a fifth above the open string
 * @param golden the golden variant, 0.1618 of the speaking length
 */
public record AfterLength(Length sixth, Length golden) {
    private static final double GOLDEN_VARIANT = 0.1618;

    public static AfterLength of(Length speakingLength) {
        return new AfterLength(Length.ofMm(speakingLength.mm() / 6), Length.ofMm(speakingLength.mm() * GOLDEN_VARIANT));
    }
}
