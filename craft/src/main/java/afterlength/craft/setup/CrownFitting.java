package afterlength.craft.setup;

/** Lays the crown that was asked for on the two outer wood points. */
final class CrownFitting {
    private CrownFitting() {}

    /** For a crown that {@link CrownChecks} found possible. */
    static CrownCurve fit(BridgeInputs inputs, StringLayout layout) {
        Crown crown = inputs.crown();
        if (crown instanceof RadiusCrown circle) {
            return CrownArc.through(layout.bassWood(), layout.trebleWood(), circle.radius_mm());
        }
        if (crown instanceof TemplateCrown template) {
            return TemplatePlacing.find(template, layout.bassWood(), layout.trebleWood())
                    .orElseThrow();
        }
        return EvenPlay.crown(inputs, layout, ((EvenPlayCrown) crown).axesFor(inputs));
    }
}
