package afterlength.craft.setup;

/** From what the tension of a string at its pitch follows, or what follows from its tension. */
public sealed interface StringMass {
    /** Mass per length for this pitch and speaking length. */
    double linearDensity_g_m(double frequency_Hz, double speakingLength_mm);

    /** As stated or weighed. */
    record LinearDensity(double linearDensity_g_m) implements StringMass {
        @Override
        public double linearDensity_g_m(double frequency_Hz, double speakingLength_mm) {
            return linearDensity_g_m;
        }
    }

    /** A solid string: plain gut, steel or nylon, nothing wound round it. */
    record Solid(double diameter_mm, double density_kg_m3) implements StringMass {
        @Override
        public double linearDensity_g_m(double frequency_Hz, double speakingLength_mm) {
            return StringMechanics.solidLinearDensity_g_m(diameter_mm, density_kg_m3);
        }
    }

    /** The tension is known. */
    record FromTension(double tension_N) implements StringMass {
        @Override
        public double linearDensity_g_m(double frequency_Hz, double speakingLength_mm) {
            return StringMechanics.linearDensity_g_m(tension_N, frequency_Hz, speakingLength_mm);
        }
    }
}
