package afterlength.craft.setup;

import java.util.OptionalDouble;

/** How hard a string is drawn, as far as it is known. Geometry does without; a pressing bow and the load need it. */
public sealed interface StringPull {
    /** The tension over this speaking length, empty when nothing is known of it. */
    OptionalDouble findTension_N(double speakingLength_mm);

    /** A tension that was measured or stated. */
    record Tension(double tension_N) implements StringPull {
        @Override
        public OptionalDouble findTension_N(double speakingLength_mm) {
            return OptionalDouble.of(tension_N);
        }
    }

    /** A mass per length and the pitch the string is tuned to: T = 4 f² L² µ. */
    record DensityAndPitch(double linearDensity_g_m, double frequency_Hz) implements StringPull {
        @Override
        public OptionalDouble findTension_N(double speakingLength_mm) {
            return OptionalDouble.of(StringMechanics.tension_N(linearDensity_g_m, frequency_Hz, speakingLength_mm));
        }
    }

    /** Nothing is known. */
    record Unknown() implements StringPull {
        @Override
        public OptionalDouble findTension_N(double speakingLength_mm) {
            return OptionalDouble.empty();
        }
    }
}
