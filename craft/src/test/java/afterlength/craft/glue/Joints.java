package afterlength.craft.glue;

import afterlength.craft.units.Length;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import java.util.Optional;

/** Spreads of the worked rows: glue 1 : 2 at 60 °C, one face, gel at 32 °C. */
final class Joints {
    private Joints() {}

    static Spread thick(WoodHeat wood, double wood_C, double film_mm) {
        return spread(wood, wood_C, film_mm, Optional.empty());
    }

    static Spread plate(WoodHeat wood, double wood_C, double film_mm, double plate_mm) {
        return spread(wood, wood_C, film_mm, Optional.of(Length.ofMm(plate_mm)));
    }

    private static Spread spread(WoodHeat wood, double wood_C, double film_mm, Optional<Length> plate) {
        return new Spread(
                Temperature.ofCelsius(60),
                Temperature.ofCelsius(wood_C),
                Length.ofMm(film_mm),
                0.5,
                wood,
                false,
                Temperature.ofCelsius(32),
                plate,
                Temperature.ofCelsius(20));
    }

    static WorkingWindow.Known known(Spread spread) {
        return (WorkingWindow.Known) WorkingWindow.of(spread);
    }
}
