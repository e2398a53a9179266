package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Drawdown;
import afterlength.craft.colour.DrawdownFit;
import afterlength.craft.colour.FittedColorant;
import afterlength.craft.colour.Saunderson;
import java.util.List;

/** A colour with its drawdowns, before it is fitted. Thicknesses are counted in coats. */
public record NewColour(
        String name,
        String medium,
        String reversibleWith,
        ColourClass colourClass,
        boolean spectral,
        List<Drawdown> drawdowns,
        String hand) {
    public NewColour {
        drawdowns = List.copyOf(drawdowns);
    }

    /** @throws IllegalArgumentException when the drawdowns do not settle on one film */
    FittedColorant fitted() {
        return DrawdownFit.fit(name, drawdowns, colourClass.noise(), Saunderson.VARNISH);
    }
}
