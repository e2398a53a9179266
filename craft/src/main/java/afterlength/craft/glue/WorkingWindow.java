package afterlength.craft.glue;

import afterlength.craft.units.Problem;
import afterlength.craft.units.Temperature;
import java.util.List;

/**
 * How long a film of hot glue stays workable on wood: the seconds until it has cooled to its gel point, as a band. Thick wood is
 * answered by {@link HalfSpace}; where the window outlasts {@code 0.3·L²/α} of the plate, film and plate are reckoned together
 * ({@link PlateCooling}), and the answer says which it was. It is guidance, never a promise.
 */
public sealed interface WorkingWindow {
    /** Source: docs/sources.md#petherick-1903, 60 °F. */
    double WARM_PARTS_BELOW_C = 15.6;

    /**
     * The band, and by which model.
     *
     * @param validFor_s how long thick wood is a fair picture of this plate; infinite without a thickness
     * @param cooling the typical film from the brush on, for the drawing
     */
    record Known(
            WindowSeconds seconds,
            GluingModel model,
            double validFor_s,
            List<FilmAt> cooling,
            List<GluingCaveat> caveats)
            implements WorkingWindow {
        public Known {
            cooling = List.copyOf(cooling);
            caveats = List.copyOf(caveats);
        }
    }

    /** The glue is hotter than any source allows. */
    record Refused(List<Problem> problems) implements WorkingWindow {}

    static WorkingWindow of(Spread spread) {
        return spread.findProblem()
                .<WorkingWindow>map(problem -> new Refused(List.of(problem)))
                .orElseGet(() -> new WindowReckoning(spread).answer());
    }

    /** The typical window on parts of these temperatures: what warming them gives. */
    static List<WarmedPart> onParts(Spread spread, List<Temperature> parts) {
        return parts.stream()
                .map(part -> new WarmedPart(part, of(spread.withPart(part))))
                .toList();
    }

    /** One line of the table of warmed parts. */
    record WarmedPart(Temperature part, WorkingWindow window) {}
}
