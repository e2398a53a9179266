package afterlength.craft.access;

import java.util.ArrayList;
import java.util.List;

/** A way in, from outside to the place under the crack, as poses with straight moves between them. */
public record Motion(List<Pose> poses) implements MotionAnswer {
    public Motion {
        poses = List.copyOf(poses);
        if (poses.size() < 2) {
            throw new IllegalArgumentException("motion has " + poses.size() + " poses; give at least 2");
        }
    }

    /** Poses close together: no part of a thing of the reach moves further between two of them than the step. */
    public List<Pose> closely(double reach_mm, double step_mm) {
        List<Pose> close = new ArrayList<>();
        for (int i = 0; i + 1 < poses.size(); i++) {
            Pose from = poses.get(i);
            Pose to = poses.get(i + 1);
            int count = Math.max(1, (int) Math.ceil(moved_mm(from, to, reach_mm) / step_mm));
            for (int part = 0; part < count; part++) {
                close.add(from.towards(to, (double) part / count));
            }
        }
        close.add(poses.get(poses.size() - 1));
        return close;
    }

    /** Some poses to draw, evenly along the way; the first and the last among them. */
    public List<Pose> drawn(double reach_mm, int count) {
        List<Pose> close = closely(reach_mm, 0.25);
        List<Pose> drawn = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            drawn.add(close.get((int) Math.round((double) i * (close.size() - 1) / (count - 1))));
        }
        return drawn;
    }

    private static double moved_mm(Pose from, Pose to, double reach_mm) {
        double turned_deg = Math.abs(to.tilt_deg() - from.tilt_deg()) + Math.abs(to.heading_deg() - from.heading_deg());
        double shift_mm =
                Math.hypot(Math.hypot(to.x_mm() - from.x_mm(), to.y_mm() - from.y_mm()), to.z_mm() - from.z_mm());
        return shift_mm + Math.toRadians(turned_deg) * reach_mm;
    }
}
