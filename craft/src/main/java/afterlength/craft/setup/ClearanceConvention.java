package afterlength.craft.setup;

/**
 * How the room between board and string is measured, always from the board surface to the underside of the string. The two agree
 * on the centre line and on a flat board; towards the edge of a round board a rule standing square leans outwards and reads less:
 * 5.5 mm read square under the G of a 42 mm violin board are 5.85 mm upright. A note of a clearance is worth little without it.
 */
public enum ClearanceConvention {
    /** Along the normal of the board surface, as a small rule stands on the board: distance to the axis of the arc less R. */
    SQUARE {
        @Override
        double underside_mm(double radius_mm, double y_mm, double clearance_mm) {
            double reach_mm = radius_mm + clearance_mm;
            return clearance_mm + BoardArc.height_mm(reach_mm, y_mm);
        }

        @Override
        double clearance_mm(double radius_mm, double y_mm, double underside_mm) {
            double upright_mm = radius_mm + underside_mm;
            double reach_mm = Math.hypot(y_mm, upright_mm);
            return underside_mm + y_mm * y_mm / (reach_mm + upright_mm);
        }

        @Override
        double widest_mm(double radius_mm, double clearance_mm) {
            return radius_mm + clearance_mm;
        }
    },
    /** Along z. */
    UPRIGHT {
        @Override
        double underside_mm(double radius_mm, double y_mm, double clearance_mm) {
            return clearance_mm + BoardArc.height_mm(radius_mm, y_mm);
        }

        @Override
        double clearance_mm(double radius_mm, double y_mm, double underside_mm) {
            return underside_mm - BoardArc.height_mm(radius_mm, y_mm);
        }

        @Override
        double widest_mm(double radius_mm, double clearance_mm) {
            return radius_mm;
        }
    };

    /** Height over the board line of a string that runs with this clearance at y. */
    abstract double underside_mm(double radius_mm, double y_mm, double clearance_mm);

    /** The clearance of a string whose underside lies at this height at y. */
    abstract double clearance_mm(double radius_mm, double y_mm, double underside_mm);

    /** The furthest a string can stand from the centre line and still have the board arc under it. */
    abstract double widest_mm(double radius_mm, double clearance_mm);
}
