package afterlength.craft.wood;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import java.util.ArrayList;
import java.util.List;

/**
 * How much wider a plate becomes across the grain when its moisture content changes: {@code ΔD = D·C·(M_to − M_from)}, with the
 * radial coefficient of the wood for a plate cut on the quarter and the tangential one for a plate cut on the slab. Negative
 * where it becomes narrower. The coefficients are valid from 6 to 14 % moisture content; beyond that the value carries a caveat.
 * Above {@value #FIBRE_SATURATION_PCT} % wood takes up water without growing, so no change is counted there. Left out: restraint at
 * glued edges, creep, and movement along the grain, which is far smaller. Source:
 * docs/sources.md#shrink-and-swell.
 *
 * @param low the change with the smallest coefficient of the wood, the least movement
 * @param typical the change with the typical coefficient
 * @param high the change with the largest coefficient, the most movement
 * @param caveats what has to be said beside the numbers
 */
public record WidthChange(Length low, Length typical, Length high, List<WoodCaveat> caveats) {
    /** In per cent moisture content. Source: docs/sources.md#shrink-and-swell. */
    static final double LOWEST_VALID_PCT = 6;

    static final double HIGHEST_VALID_PCT = 14;

    /** In per cent moisture content. Source: docs/sources.md#wood-handbook-2021. */
    static final double FIBRE_SATURATION_PCT = 30;

    public WidthChange {
        caveats = List.copyOf(caveats);
    }

    public static WidthChange of(Length width, Wood wood, Cut cut, MoistureContent from, MoistureContent to) {
        if (width.mm() <= 0) {
            throw new IllegalArgumentException("width " + width.mm() + " mm is not greater than 0 mm");
        }
        Coefficient coefficient = wood.acrossWidth(cut);
        double widthTimesChange_mm = width.mm() * (growing_pct(to) - growing_pct(from));
        return new WidthChange(
                Length.ofMm(widthTimesChange_mm * coefficient.low_perPct()),
                Length.ofMm(widthTimesChange_mm * coefficient.typical_perPct()),
                Length.ofMm(widthTimesChange_mm * coefficient.high_perPct()),
                caveats(wood, coefficient, from, to));
    }

    private static double growing_pct(MoistureContent moisture) {
        return Math.min(moisture.pct(), FIBRE_SATURATION_PCT);
    }

    private static List<WoodCaveat> caveats(
            Wood wood, Coefficient coefficient, MoistureContent from, MoistureContent to) {
        List<WoodCaveat> caveats = new ArrayList<>();
        caveats.add(coefficient.isSpread() ? new WoodCaveat.MiddleOfSpread(wood) : new WoodCaveat.OneMeanOnly(wood));
        for (MoistureContent moisture : List.of(from, to)) {
            if (moisture.pct() < LOWEST_VALID_PCT || moisture.pct() > HIGHEST_VALID_PCT) {
                caveats.add(new WoodCaveat.OutsideMovementRange(moisture.pct()));
            }
        }
        caveats.add(new WoodCaveat.FreePlate());
        return caveats;
    }
}
