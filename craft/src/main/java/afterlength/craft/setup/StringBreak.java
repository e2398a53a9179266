package afterlength.craft.setup;

import java.util.OptionalDouble;

/** How the strings bend over the bridge, in the side view. */
public sealed interface StringBreak {
    /** The angle between the two sides of a string, 180 for a straight one; empty when it is not known. */
    OptionalDouble findStringAngle_deg();

    /** How far the load tips towards the board; empty when it is not known. */
    OptionalDouble findLean_deg();

    /** The angle was measured or is wished for. */
    record Angle(double stringAngle_deg) implements StringBreak {
        @Override
        public OptionalDouble findStringAngle_deg() {
            return OptionalDouble.of(stringAngle_deg);
        }

        @Override
        public OptionalDouble findLean_deg() {
            return OptionalDouble.empty();
        }
    }

    /**
     * From heights over one plane along the body.
     *
     * @param afterLength_mm along the string from bridge to tailpiece fret
     * @param tailHeight_mm height of the string at the tailpiece fret
     * @param bridgeHeight_mm height of the string at the bridge
     * @param neckSlope_deg how steeply the string rises from the nut to the bridge against that plane
     */
    record Heights(double afterLength_mm, double tailHeight_mm, double bridgeHeight_mm, double neckSlope_deg)
            implements StringBreak {
        double tailSlope_deg() {
            return Math.toDegrees(Math.asin((bridgeHeight_mm - tailHeight_mm) / afterLength_mm));
        }

        @Override
        public OptionalDouble findStringAngle_deg() {
            return OptionalDouble.of(180 - neckSlope_deg - tailSlope_deg());
        }

        @Override
        public OptionalDouble findLean_deg() {
            return OptionalDouble.of(StringMechanics.lean_deg(neckSlope_deg, tailSlope_deg()));
        }
    }

    /** Nothing is known; no downforce follows. */
    record Unknown() implements StringBreak {
        @Override
        public OptionalDouble findStringAngle_deg() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble findLean_deg() {
            return OptionalDouble.empty();
        }
    }
}
