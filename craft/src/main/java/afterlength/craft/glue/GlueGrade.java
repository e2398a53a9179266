package afterlength.craft.glue;

import java.util.List;
import java.util.Optional;

/**
 * The eighteen trade grades of animal glue by gram strength on the glue scale, with the least viscosity of a 12.5 % solution at
 * 60 °C. A strength between two grades, or on the other scale, has no grade. Source: docs/sources.md#glue-grades.
 */
public record GlueGrade(int number, int least_g, int most_g, int viscosity_mP) {
    private static final List<GlueGrade> ALL = List.of(
            new GlueGrade(1, 10, 26, 0),
            new GlueGrade(2, 27, 46, 0),
            new GlueGrade(3, 47, 69, 0),
            new GlueGrade(4, 70, 94, 42),
            new GlueGrade(5, 95, 121, 52),
            new GlueGrade(6, 122, 149, 57),
            new GlueGrade(7, 150, 177, 62),
            new GlueGrade(8, 178, 206, 72),
            new GlueGrade(9, 207, 236, 82),
            new GlueGrade(10, 237, 266, 92),
            new GlueGrade(11, 267, 298, 101),
            new GlueGrade(12, 299, 330, 111),
            new GlueGrade(13, 331, 362, 121),
            new GlueGrade(14, 363, 394, 131),
            new GlueGrade(15, 395, 427, 145),
            new GlueGrade(16, 428, 460, 157),
            new GlueGrade(17, 461, 494, 175),
            new GlueGrade(18, 495, 529, 191));

    public static Optional<GlueGrade> find(double strength_g, BloomScale scale) {
        if (scale != BloomScale.GLUE) {
            return Optional.empty();
        }
        return ALL.stream()
                .filter(grade -> Math.round(strength_g) >= grade.least_g && Math.round(strength_g) <= grade.most_g)
                .findFirst();
    }

    public static List<GlueGrade> list() {
        return ALL;
    }
}
