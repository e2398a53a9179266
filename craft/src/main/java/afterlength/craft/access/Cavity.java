package afterlength.craft.access;

import afterlength.craft.geometry.Outline;

/**
 * The room of the instrument round a sound-hole: a flat plate with the hole cut square through it, and the back as a flat floor. Arch,
 * ribs, blocks, bar and post are left out.
 *
 * @param plate_mm thickness of the plate at the hole
 * @param depth_mm from the underside of the plate to the back
 */
public record Cavity(Outline hole, double plate_mm, double depth_mm) {
    public Cavity {
        if (!(plate_mm > 0 && depth_mm > 0)) {
            throw new IllegalArgumentException(
                    "plate " + plate_mm + " mm and depth " + depth_mm + " mm; both must be more than 0 mm");
        }
    }

    double floor_mm() {
        return -plate_mm - depth_mm;
    }
}
