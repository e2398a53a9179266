package afterlength.workshop.climate;

import java.time.Instant;

/** The air that a logger read nearest to a moment. */
public record LoggedAir(Instant at, String place, double temperature_C, double humidity_pct) {}
