package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A row of cleats along a crack: as many as the spacing asks for, evenly between the ends, each on the line of the crack. One that
 * would lie on something moves along the crack to the nearest free place, at most half the spacing and never onto another cleat;
 * where there is none it is left out. A short crack that is clean and well glued may need none at all: that is an answer too
 * (docs/sources.md#darnton-studs), and not one that arithmetic can give.
 */
public record CleatRow(List<PlacedCleat> cleats, List<LeftOut> leftOut, double addedMass_g) {
    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final double STEP_MM = 0.25;
    /** Between the corners of two cleats; a knife has to get between. */
    private static final double BETWEEN_MM = 1;

    public CleatRow {
        cleats = List.copyOf(cleats);
        leftOut = List.copyOf(leftOut);
    }

    public static CleatRow of(CleatPlan plan) {
        return new Laying(plan).row();
    }

    private static final class Laying {
        private final CleatPlan plan;
        private final List<Geometry> keptFree = new ArrayList<>();
        private final List<PlacedCleat> cleats = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        Laying(CleatPlan plan) {
            this.plan = plan;
            plan.keepOffs().forEach(area -> keptFree.add(polygon(area.outline()).buffer(area.margin_mm())));
        }

        CleatRow row() {
            for (double along_mm : wanted()) {
                Optional<PlacedCleat> cleat = findPlace(along_mm);
                cleat.ifPresentOrElse(cleats::add, () -> leftOut.add(new LeftOut(along_mm, because(along_mm))));
            }
            Cleat cleat = plan.cleat();
            double each_mm3 = cleat.length_mm() * cleat.width_mm() * cleat.thickness_mm();
            return new CleatRow(cleats, leftOut, cleats.size() * each_mm3 * plan.density_kg_m3() * 1e-6);
        }

        /** One in the middle when there is no room for two. */
        private List<Double> wanted() {
            double length_mm = plan.crack().length_mm();
            double between_mm = length_mm - 2 * plan.toEnds_mm();
            if (between_mm < 0) {
                return List.of();
            }
            int gaps = (int) Math.ceil(between_mm / plan.spacing_mm() - 1e-9);
            if (gaps == 0 || between_mm < across_mm() + BETWEEN_MM) {
                return List.of(length_mm / 2);
            }
            List<Double> wanted = new ArrayList<>();
            for (int i = 0; i <= gaps; i++) {
                wanted.add(plan.toEnds_mm() + between_mm * i / gaps);
            }
            return wanted;
        }

        private double across_mm() {
            return Math.hypot(plan.cleat().length_mm(), plan.cleat().width_mm());
        }

        private Optional<PlacedCleat> findPlace(double wanted_mm) {
            for (double moved_mm = 0; moved_mm <= plan.spacing_mm() / 2; moved_mm += STEP_MM) {
                for (double along_mm : new double[] {wanted_mm - moved_mm, wanted_mm + moved_mm}) {
                    if (isOnCrack(along_mm)) {
                        PlacedCleat cleat = placed(along_mm, Math.abs(moved_mm));
                        if (isFree(cleat)) {
                            return Optional.of(cleat);
                        }
                    }
                }
            }
            return Optional.empty();
        }

        private boolean isOnCrack(double along_mm) {
            return along_mm >= plan.toEnds_mm() - 1e-9
                    && along_mm <= plan.crack().length_mm() - plan.toEnds_mm() + 1e-9;
        }

        private PlacedCleat placed(double along_mm, double moved_mm) {
            double crack_deg = plan.crack().direction_deg(along_mm);
            double turn_deg = crack_deg + plan.shape().toCrack_deg();
            Point centre = plan.crack().at(along_mm);
            Section face = new Section(plan.cleat().length_mm(), plan.cleat().width_mm());
            Outline outline = new Outline(new PlacedSection(face, centre, turn_deg).corners());
            double grain_deg = plan.grain().direction_deg(plan.plateGrain_deg(), crack_deg);
            return new PlacedCleat(along_mm, centre, turn_deg, grain_deg, moved_mm, outline);
        }

        private boolean isFree(PlacedCleat cleat) {
            Geometry face = polygon(cleat.outline());
            boolean onOther =
                    cleats.stream().anyMatch(other -> polygon(other.outline()).distance(face) < BETWEEN_MM);
            return !onOther && keptFree.stream().noneMatch(area -> area.intersects(face));
        }

        private KeepOff.Kind because(double along_mm) {
            Geometry face = polygon(placed(along_mm, 0).outline());
            for (int i = 0; i < keptFree.size(); i++) {
                if (keptFree.get(i).intersects(face)) {
                    return plan.keepOffs().get(i).kind();
                }
            }
            return KeepOff.Kind.CLEAT;
        }

        private static Geometry polygon(Outline outline) {
            Coordinate[] ring = new Coordinate[outline.points().size() + 1];
            for (int i = 0; i < ring.length; i++) {
                Point point = outline.points().get(i % outline.points().size());
                ring[i] = new Coordinate(point.x_mm(), point.y_mm());
            }
            return PLANE.createPolygon(ring);
        }
    }
}
