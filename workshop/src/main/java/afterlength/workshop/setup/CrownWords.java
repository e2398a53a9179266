package afterlength.workshop.setup;

import afterlength.craft.setup.BestRadius;
import afterlength.craft.setup.CrownTried;
import afterlength.craft.setup.RadiusCrown;
import afterlength.workshop.desk.Figures;

/** Crowns side by side, in sentences. */
final class CrownWords {
    private CrownWords() {}

    static String name(CrownTried tried) {
        return tried.crown() instanceof RadiusCrown circle
                ? "radius " + Figures.plain(circle.radius_mm())
                : CrownKind.of(tried.crown()).words();
    }

    /** What even play gains over the radius that was typed. */
    static String gain(CrownTried even, CrownTried other) {
        double gain_deg = even.gainOver(other).deg();
        return gain_deg < 0.05
                ? "Even play has no more room at its tightest place than " + name(other) + "."
                : "Even play has " + Figures.fixed(gain_deg, 1) + "° more room at its tightest place than "
                        + name(other) + " at its own.";
    }

    /** The plain arc with the most room, and what even play gains over it. */
    static String best(BestRadius best, double even_deg) {
        return "Of all plain arcs that keep the inner clearances between the outer two, a radius of "
                + Figures.mm(best.radius_mm(), 1) + " has the most room at its tightest place; even play has "
                + Figures.fixed(Math.max(0, even_deg - best.opening_deg()), 1) + "° more.";
    }
}
