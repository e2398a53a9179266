package afterlength.craft.access;

/**
 * Where the carried thing is: the middle of its gluing face in millimetres, z upwards from the outer face of the plate; the heading of
 * its arm from the x axis towards the y axis; and its tilt, positive when the end of the arm is raised and the jaw hangs down.
 */
public record Pose(double x_mm, double y_mm, double z_mm, double heading_deg, double tilt_deg) {
    /** A place of the carried thing in the room: x, y, z. */
    double[] place(double along_mm, double across_mm, double up_mm) {
        double heading = Math.toRadians(heading_deg);
        double ahead_mm = ahead(along_mm, up_mm);
        return new double[] {
            x_mm + ahead_mm * Math.cos(heading) - across_mm * Math.sin(heading),
            y_mm + ahead_mm * Math.sin(heading) + across_mm * Math.cos(heading),
            z_mm + rise(along_mm, up_mm)
        };
    }

    private double ahead(double along_mm, double up_mm) {
        double tilt = Math.toRadians(tilt_deg);
        return along_mm * Math.cos(tilt) - up_mm * Math.sin(tilt);
    }

    private double rise(double along_mm, double up_mm) {
        double tilt = Math.toRadians(tilt_deg);
        return along_mm * Math.sin(tilt) + up_mm * Math.cos(tilt);
    }

    /** A share of the way to another pose. */
    public Pose towards(Pose other, double share) {
        return new Pose(
                x_mm + (other.x_mm - x_mm) * share,
                y_mm + (other.y_mm - y_mm) * share,
                z_mm + (other.z_mm - z_mm) * share,
                heading_deg + (other.heading_deg - heading_deg) * share,
                tilt_deg + (other.tilt_deg - tilt_deg) * share);
    }
}
