package afterlength.craft.wood;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plate glued at its edges does when it dries or grows damp: a free crack or seam opens or closes by {@code r·|ΔD|}, and a
 * sound plate is stressed instead by {@code E_R·C·|ΔM|·φ}. Neither {@code r} (the part of the movement that reaches the crack)
 * nor {@code φ} (the part of the stress that creep leaves) has a published value: both are bands, so both answers are bands, and
 * {@code r = 1} is an upper bound. Stress is known only for a quarter-cut plate of spruce, whose stiffness across the grain was
 * read. Left out: arching, bar, ribs that bend, glue that creeps.
 *
 * @param movement_mm how far the edges of a crack come together or go apart, without sign
 * @param closing whether the plate grows, so that a crack closes
 * @param stress_MPa across the grain, without sign, or none where no stiffness was read
 */
public record HeldPlate(Band movement_mm, boolean closing, Optional<Band> stress_MPa, List<WoodCaveat> caveats) {
    /**
     * Across the grain along the radius, GPa: measured statically and by ultrasound; the ratio of the handbook gives 0.849.
     * Source: docs/sources.md#sitka-constants.
     */
    static final double STIFFNESS_LEAST_GPA = 0.817;

    static final double STIFFNESS_MOST_GPA = 1.037;

    public HeldPlate {
        caveats = List.copyOf(caveats);
    }

    public static HeldPlate of(
            Length width, Wood wood, Cut cut, MoistureContent from, MoistureContent to, Share reaching, Share left) {
        WidthChange change = WidthChange.of(width, wood, cut, from, to);
        double least_mm = Math.abs(change.low().mm()) * reaching.least();
        double most_mm = Math.abs(change.high().mm()) * reaching.most();
        List<WoodCaveat> caveats = new ArrayList<>(change.caveats());
        caveats.remove(new WoodCaveat.FreePlate());
        caveats.add(new WoodCaveat.RestraintUnknown());
        return new HeldPlate(
                new Band(least_mm, most_mm),
                change.typical().mm() > 0,
                findStress(width, wood, cut, change, left),
                caveats);
    }

    private static Optional<Band> findStress(Length width, Wood wood, Cut cut, WidthChange change, Share left) {
        if (wood != Wood.SITKA_SPRUCE || cut != Cut.QUARTER) {
            return Optional.empty();
        }
        double strain = Math.abs(change.typical().mm()) / width.mm();
        return Optional.of(new Band(
                1000 * STIFFNESS_LEAST_GPA * strain * left.least(), 1000 * STIFFNESS_MOST_GPA * strain * left.most()));
    }
}
