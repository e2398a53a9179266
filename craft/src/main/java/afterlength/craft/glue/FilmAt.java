package afterlength.craft.glue;

/** The mean temperature of the film some seconds after spreading. */
public record FilmAt(double time_s, double film_C) {}
