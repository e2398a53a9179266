package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;

/** The crown must reach over both outer wood points, and the wood must stand over the belly. */
final class CrownChecks {
    private final BridgeInputs inputs;
    private final StringLayout layout;
    private final ProblemList problems;

    private CrownChecks(BridgeInputs inputs, ProblemList problems) {
        this.inputs = inputs;
        this.layout = new StringLayout(inputs);
        this.problems = problems;
    }

    static void look(BridgeInputs inputs, ProblemList problems) {
        CrownChecks checks = new CrownChecks(inputs, problems);
        if (inputs.crown() instanceof RadiusCrown circle) {
            checks.radius(circle.radius_mm());
        } else if (inputs.crown() instanceof TemplateCrown template) {
            checks.placing(template);
        } else if (inputs.crown() instanceof EvenPlayCrown even) {
            checks.map(even.axesFor(inputs));
        }
        if (problems.isEmpty()) {
            checks.heights();
        }
    }

    private double chord_mm() {
        return layout.bassWood().distanceTo_mm(layout.trebleWood());
    }

    private void radius(double radius_mm) {
        double half_mm = chord_mm() / 2;
        if (radius_mm < half_mm) {
            problems.add(
                    "/crown/radius_mm",
                    radius_mm,
                    "The crown radius is " + PlainNumber.of(radius_mm, "mm") + "; it must be at least "
                            + PlainNumber.of(half_mm, "mm")
                            + ", half the distance between the outer wood points. Give a larger radius or a narrower spacing at the bridge.");
        }
    }

    private void placing(TemplateCrown template) {
        if (TemplatePlacing.find(template, layout.bassWood(), layout.trebleWood())
                .isEmpty()) {
            double width_mm = template.points()
                    .get(0)
                    .distanceTo_mm(template.points().get(template.points().size() - 1));
            problems.add(
                    "/crown/template_mm",
                    width_mm,
                    "The template is " + PlainNumber.of(width_mm, "mm")
                            + " wide and cannot be laid on outer wood points " + PlainNumber.of(chord_mm(), "mm")
                            + " apart; it must reach over both without overhanging. Read off a longer piece of its edge or give a"
                            + " narrower spacing at the bridge.");
        }
    }

    private void map(BowMapAxes axes) {
        BowMapChecks.look(inputs, axes, problems);
        if (problems.isEmpty() && !BowSurvey.hasPlaces(inputs, axes, layout)) {
            problems.add(
                    "/bow/semitones",
                    axes.semitones(),
                    "No stop of the map lies on the board; for even play at least one"
                            + " place must be playable. Add 0 for the open strings.");
        }
    }

    /** The wood is lowest at an outer string; only a template can dip between them. */
    private void heights() {
        height(layout.bassWood());
        height(layout.trebleWood());
        if (problems.isEmpty() && inputs.crown() instanceof TemplateCrown) {
            CrownFitting.fit(inputs, layout).points(2).forEach(this::height);
        }
    }

    private void height(CrossPoint wood) {
        double height_mm = inputs.projection_mm() + wood.z_mm();
        if (!(height_mm > 0) && problems.isEmpty()) {
            problems.add(
                    "/projection_mm",
                    inputs.projection_mm(),
                    "The projection is "
                            + PlainNumber.of(inputs.projection_mm(), "mm") + "; the wood at y "
                            + PlainNumber.of(wood.y_mm(), "mm")
                            + " would stand " + PlainNumber.of(height_mm, "mm")
                            + " over the belly and must be above 0 mm. Measure the projection and the board radius again.");
        }
    }
}
