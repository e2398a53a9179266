package afterlength.craft.setup;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The plain arc with the most room at its tightest place on a map of the bow, among those whose inner clearances lie between the
 * outer two. Found by looking at evenly spaced curvatures, then again more finely about the best; good to what a template of
 * radii can be cut to, and meant for comparison.
 *
 * @param opening_deg room at the tightest place, negative when limits have crossed there
 */
public record BestRadius(double radius_mm, double opening_deg) {
    private static final int LOOKS = 200;

    /** Empty when no arc keeps the inner clearances between the outer two. For inputs and axes that have no problems. */
    public static Optional<BestRadius> find(BridgeInputs inputs, BowMapAxes axes) {
        return new Scan(inputs, axes).find();
    }

    private static final class Scan {
        private final BridgeInputs inputs;
        private final StringLayout layout;
        private final List<Played> places;

        private Scan(BridgeInputs inputs, BowMapAxes axes) {
            this.inputs = inputs;
            layout = new StringLayout(inputs);
            CrownArc any = CrownArc.through(layout.bassWood(), layout.trebleWood(), 1e6);
            places = BowSurvey.places(inputs, axes.heaviestOnly(), layout.runsOn(any));
        }

        private Optional<BestRadius> find() {
            double tightest = 2 / layout.bassWood().distanceTo_mm(layout.trebleWood());
            double step = tightest / LOOKS;
            return best(step, tightest)
                    .flatMap(rough ->
                            best(1 / rough.radius_mm() - step, Math.min(tightest, 1 / rough.radius_mm() + step)));
        }

        private Optional<BestRadius> best(double from, double to) {
            @Nullable BestRadius best = null;
            for (int i = 0; i <= LOOKS; i++) {
                double curvature = from + (to - from) * i / LOOKS;
                @Nullable BestRadius next = curvature > 0 ? look(1 / curvature) : null;
                if (next != null && (best == null || next.opening_deg > best.opening_deg)) {
                    best = next;
                }
            }
            return Optional.ofNullable(best);
        }

        private @Nullable BestRadius look(double radius_mm) {
            StringRun[] runs = layout.runsOn(CrownArc.through(layout.bassWood(), layout.trebleWood(), radius_mm));
            if (!layout.keepsBetweenOuter(runs)) {
                return null;
            }
            BowContact contact = new BowContact(inputs, runs);
            double least_rad = places.stream()
                    .mapToDouble(played -> contact.limits(played).opening_rad())
                    .filter(opening_rad -> !Double.isNaN(opening_rad))
                    .min()
                    .orElseThrow();
            return new BestRadius(radius_mm, Math.toDegrees(least_rad));
        }
    }
}
