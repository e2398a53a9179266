package afterlength.craft.glue;

import afterlength.craft.units.Length;
import afterlength.craft.units.Problem;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import java.util.Optional;

/**
 * Glue as it is spread: everything that decides how fast it gels.
 *
 * @param glue the temperature of the glue as it leaves the brush
 * @param part the temperature of the wood
 * @param film the thickness of the film on one face
 * @param glueToWater mass of dry glue to mass of water
 * @param closed whether the joint is closed at once, so that each face takes half of the film
 * @param gel the temperature at which this glue gels
 * @param plate the thickness of the part, or none for a part as good as endless
 * @param room the air behind the plate
 */
public record Spread(
        Temperature glue,
        Temperature part,
        Length film,
        double glueToWater,
        WoodHeat wood,
        boolean closed,
        Temperature gel,
        Optional<Length> plate,
        Temperature room) {
    /** Middle of the two ranges read for gelatine. Source: docs/sources.md#gelatine-gel, 30 to 35 °C. */
    public static final double USUAL_GEL_C = 32;

    /** From 30–35 and 30–34 °C; stronger grades lie higher. Source: docs/sources.md#gelatine-gel. */
    public static final double GEL_SPREAD_C = 3;

    double film_m() {
        return film.mm() / 1000 / (closed ? 2 : 1);
    }

    Spread with(Temperature otherGel, WoodHeat otherWood) {
        return new Spread(glue, part, film, glueToWater, otherWood, closed, otherGel, plate, room);
    }

    public Spread withPart(Temperature warmer) {
        return new Spread(glue, warmer, film, glueToWater, wood, closed, gel, plate, room);
    }

    /** What forbids an answer; the words are those of the pot. */
    Optional<Problem> findProblem() {
        return PotHeat.findProblem(glue);
    }
}
