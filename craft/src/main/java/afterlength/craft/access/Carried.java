package afterlength.craft.access;

import java.util.List;

/** What has to go through the hole in one piece. */
public record Carried(List<Box> boxes) {
    /** The post ends so far over the plate; longer ones only stand higher. */
    private static final double POST_OVER_MM = 20;

    public Carried {
        boxes = List.copyOf(boxes);
        if (boxes.isEmpty()) {
            throw new IllegalArgumentException("nothing is carried; give at least one box");
        }
    }

    /** A cleat alone, held by something thin that is left out, such as a wire or a thread. */
    public static Carried alone(Cleat cleat) {
        return new Carried(List.of(cleatBox(cleat)));
    }

    /** A cleat stuck on the jaw of a clamp whose arm and post come with it. */
    public static Carried on(Clamp clamp, Cleat cleat) {
        double under_mm = -cleat.thickness_mm();
        double half_mm = clamp.jawLength_mm() / 2;
        double armTop_mm = under_mm - clamp.jawHeight_mm() + Math.min(clamp.jawHeight_mm(), clamp.arm_mm());
        double armBottom_mm = armTop_mm - clamp.arm_mm();
        double end_mm = clamp.throat_mm() + clamp.arm_mm();
        return new Carried(List.of(
                cleatBox(cleat),
                Box.of(-half_mm, half_mm, clamp.jawWidth_mm(), under_mm - clamp.jawHeight_mm(), under_mm),
                Box.of(half_mm, end_mm, clamp.armWidth_mm(), armBottom_mm, armTop_mm),
                Box.of(clamp.throat_mm(), end_mm, clamp.armWidth_mm(), armTop_mm, POST_OVER_MM)));
    }

    private static Box cleatBox(Cleat cleat) {
        double half_mm = cleat.length_mm() / 2;
        return Box.of(-half_mm, half_mm, cleat.width_mm(), -cleat.thickness_mm(), 0);
    }

    /** No part of it is further from the middle of the gluing face. */
    public double reach_mm() {
        double reach_mm = 0;
        for (Box box : boxes) {
            double along_mm = Math.max(Math.abs(box.from_mm()), Math.abs(box.to_mm()));
            double up_mm = Math.max(Math.abs(box.bottom_mm()), Math.abs(box.top_mm()));
            reach_mm = Math.max(reach_mm, Math.hypot(along_mm, up_mm));
        }
        return reach_mm;
    }
}
