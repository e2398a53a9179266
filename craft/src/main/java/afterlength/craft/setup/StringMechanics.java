package afterlength.craft.setup;

/**
 * The plain mechanics of a stretched string: wave speed √(T/µ), pitch half of it over the length, therefore
 * {@code T = 4 f² L² µ}; a solid string weighs {@code µ = ρ π d² / 4}.
 *
 * <p>Valid for a thin flexible string. Left out: bending stiffness, which sharpens overtones far more than the pitch. A wound
 * string has no one density: weigh it or take its linear density as stated, never from its diameter.
 */
public final class StringMechanics {
    private StringMechanics() {}

    public static double tension_N(double linearDensity_g_m, double frequency_Hz, double length_mm) {
        double wave_m_s = 2 * frequency_Hz * length_mm / 1000;
        return wave_m_s * wave_m_s * linearDensity_g_m / 1000;
    }

    public static double linearDensity_g_m(double tension_N, double frequency_Hz, double length_mm) {
        double wave_m_s = 2 * frequency_Hz * length_mm / 1000;
        return 1000 * tension_N / (wave_m_s * wave_m_s);
    }

    public static double frequency_Hz(double tension_N, double linearDensity_g_m, double length_mm) {
        return Math.sqrt(1000 * tension_N / linearDensity_g_m) / (2 * length_mm / 1000);
    }

    public static double solidLinearDensity_g_m(double diameter_mm, double density_kg_m3) {
        return density_kg_m3 * Math.PI * diameter_mm * diameter_mm / 4000;
    }

    /** The pull of one string on its bridge, along the line that halves the string angle: 2 T cos(θ/2). */
    public static double downforce_N(double tension_N, double stringAngle_deg) {
        return 2 * tension_N * Math.cos(Math.toRadians(stringAngle_deg / 2));
    }

    /**
     * How far that pull tips towards the board, from the slopes of the string on either side below a line of equal heights. A
     * bridge in line with its load leans back by as much.
     */
    public static double lean_deg(double neckSlope_deg, double tailSlope_deg) {
        return (tailSlope_deg - neckSlope_deg) / 2;
    }

    /** Part of a vertical load that the treble foot carries; y from the centre line, feet centres at ± halfFeet. */
    public static double trebleShare(double y_mm, double halfFeet_mm) {
        return 0.5 + y_mm / (2 * halfFeet_mm);
    }

    /** How far a string of this length gives way under a force at this distance from one end: F b (L - b) / (T L). */
    public static double deflection_mm(double force_N, double distance_mm, double length_mm, double tension_N) {
        return force_N * distance_mm * (length_mm - distance_mm) / (tension_N * length_mm);
    }

    /** From the reference up to the pitch, 1200 to the octave. */
    public static double cents(double frequency_Hz, double reference_Hz) {
        return 1200 * Math.log(frequency_Hz / reference_Hz) / Math.log(2);
    }
}
