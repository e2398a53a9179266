package afterlength.craft.colour;

/** What a trial film is judged by: the target's colour in daylight and under light A, in the weighted parts of CIEDE2000. */
final class RecipeTarget {
    /** Light A counts seven tenths of daylight. Source: docs/sources.md#colour-study. */
    static final double SECOND_LIGHT = 0.7;

    static final int PARTS = 6;

    private final FilmOnGround film;
    private final Viewing daylight;
    private final Viewing lamp;
    private final Lab byDay;
    private final Lab byLamp;

    RecipeTarget(RecipeQuestion question) {
        film = new FilmOnGround(question.ground(), question.palette(), question.surface());
        daylight = Viewing.under(Light.D65, question.wavelengths());
        lamp = Viewing.under(Light.A, question.wavelengths());
        byDay = daylight.lab(question.target());
        byLamp = lamp.lab(question.target());
    }

    int wavelengths() {
        return film.wavelengths();
    }

    /** The six parts of a film, written into an array of that length. */
    void look(int[] which, double[] amounts, double[] reflectances, double[] parts) {
        film.measure(which, amounts, reflectances);
        write(ColourDifference.between(byDay, daylight.lab(reflectances)), 1, parts, 0);
        write(ColourDifference.between(byLamp, lamp.lab(reflectances)), Math.sqrt(SECOND_LIGHT), parts, PARTS / 2);
    }

    private static void write(ColourDifference difference, double weight, double[] parts, int from) {
        parts[from] = weight * difference.lightness();
        parts[from + 1] = weight * difference.chroma();
        parts[from + 2] = weight * difference.hue();
    }
}
