package afterlength.start.demo;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Drawdown;
import afterlength.craft.colour.KubelkaMunk;
import afterlength.craft.colour.Saunderson;
import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Wavelengths;
import afterlength.workshop.retouch.NewColour;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A palette that nobody ever mixed: what a coat absorbs is a step or a bell over the wavelengths, its films are counted and given the
 * noise of an instrument, and the shop fits them like measured ones. No pigment, jar or product stands behind them.
 */
final class InventedColours {
    private static final Wavelengths AT = new Wavelengths(400, 10, 31);
    private static final double NOISE = 0.0015;
    private static final double[] COATS = {0.5, 1, 1, 2};
    private static final double[] CARDS = {0.86, 0.86, 0.03, 0.03};

    private final SplittableRandom noise = new SplittableRandom(1905);

    /** Absorption falls from {@code high} to {@code low} around a wavelength. */
    private record Step(String name, double high, double low, double middle_nm, double width_nm, double scatter) {
        double absorption(double at_nm) {
            return low + (high - low) / (1 + Math.exp((at_nm - middle_nm) / width_nm));
        }
    }

    private static final List<Step> STEPS = List.of(
            new Step("yellow glaze (invented)", 1.9, 0.05, 495, 18, 0.02),
            new Step("gold-brown resin (invented)", 2.2, 0.12, 530, 45, 0.006),
            new Step("red glaze (invented)", 2.0, 0.08, 585, 14, 0.03),
            new Step("brown earth (invented)", 1.6, 0.45, 560, 70, 0.12),
            new Step("black (invented)", 1.5, 1.4, 550, 80, 0.02));

    List<NewColour> list(String hand) {
        return STEPS.stream().map(step -> colour(step, hand)).toList();
    }

    private NewColour colour(Step step, String hand) {
        List<Drawdown> films = new ArrayList<>();
        for (int n = 0; n < COATS.length; n++) {
            films.add(new Drawdown(COATS[n], Spectrum.even(AT, CARDS[n]), film(step, COATS[n], CARDS[n])));
        }
        return new NewColour(
                step.name(),
                "spirit retouch varnish, 1 g in 20 g",
                "alcohol, over an isolating layer",
                ColourClass.INSTRUMENT,
                true,
                films,
                hand);
    }

    private Spectrum film(Step step, double coats, double card) {
        double inner = Saunderson.VARNISH.inner(card);
        double[] seen = new double[AT.count()];
        for (int n = 0; n < seen.length; n++) {
            double k = step.absorption(AT.first_nm() + n * AT.step_nm());
            double film = Saunderson.VARNISH.measured(KubelkaMunk.overGround(k, step.scatter(), coats, inner));
            seen[n] = Math.max(0.001, film + NOISE * (noise.nextDouble() + noise.nextDouble() - 1) * Math.sqrt(6));
        }
        return Spectrum.of(AT, seen);
    }

    /** Sealed, aged spruce, as invented as the rest. */
    static Spectrum sealedSpruce() {
        return rising(0.16, 0.52, 555, 55);
    }

    /** A golden brown old varnish. */
    static Spectrum oldVarnish() {
        return rising(0.028, 0.34, 600, 32);
    }

    private static Spectrum rising(double low, double high, double middle_nm, double width_nm) {
        double[] seen = new double[AT.count()];
        for (int n = 0; n < seen.length; n++) {
            double at_nm = AT.first_nm() + n * AT.step_nm();
            seen[n] = low + (high - low) / (1 + Math.exp((middle_nm - at_nm) / width_nm));
        }
        return Spectrum.of(AT, seen);
    }
}
