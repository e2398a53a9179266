package afterlength.craft.setup;

import org.jspecify.annotations.Nullable;

/**
 * Inner strings placed so that the tightest place on a map of the bow has as much room as it can have; see {@link EvenPlay}.
 *
 * @param axes the map to look at, or null for {@link BowMapAxes#usual}, without force when a tension is not known
 */
public record EvenPlayCrown(@Nullable BowMapAxes axes) implements Crown {
    public EvenPlayCrown() {
        this(null);
    }

    BowMapAxes axesFor(BridgeInputs inputs) {
        if (axes != null) {
            return axes;
        }
        BowMapAxes usual = BowMapAxes.usual(inputs.speakingLength_mm());
        return inputs.allTensionsKnown() ? usual : usual.withoutForce();
    }
}
