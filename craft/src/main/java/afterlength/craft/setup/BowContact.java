package afterlength.craft.setup;

/**
 * A bow meeting the strings and the edges of the waist, in the plane it moves in: square to the centre line, at one distance from
 * the bridge. One string is played, its neighbours are open and not pressed.
 *
 * <p>A stopped string lies with its underside on the board under the finger and runs straight from there to its place on the
 * bridge. Pressing moves it by {@code δ = N b (S - b) / (T S)} square to a bow halfway between its two limits, those taken before
 * pressing. Left out: the stretch of the string under the bow, the width and tilt of the hair, and the slope of belly and edges
 * against the board line between bow and bridge.
 */
final class BowContact {
    private final StringRun[] runs;
    private final Disc bassEdge;
    private final Disc trebleEdge;

    BowContact(BridgeInputs inputs, StringRun[] runs) {
        this.runs = runs;
        bassEdge = edge(inputs, -0.5);
        trebleEdge = edge(inputs, 0.5);
    }

    /** The edge of the C-bout at the bridge: half the width out, projection and edge drop below the board line. */
    private static Disc edge(BridgeInputs inputs, double side) {
        Waist waist = inputs.waist();
        return waist == null
                ? Disc.UNKNOWN
                : Disc.edge(side * waist.width_mm(), -(inputs.projection_mm() + waist.edgeDrop_mm()));
    }

    BowLimits limits(Played played) {
        int string = played.string();
        double distance_mm = played.distance_mm();
        Disc bassSide = string == 0 ? bassEdge : runs[string - 1].open(distance_mm);
        Disc trebleSide = string == runs.length - 1 ? trebleEdge : runs[string + 1].open(distance_mm);
        Disc light = played.isOpen()
                ? runs[string].open(distance_mm)
                : runs[string].stopped(played.stopped_mm(), distance_mm);
        double bow_rad = halfway_rad(Disc.tangent_rad(bassSide, light), Disc.tangent_rad(light, trebleSide));
        Disc pressed = light.pressed(played.depth_mm(), bow_rad);
        double line_rad = Disc.tangent_rad(bassSide, trebleSide);
        double room_mm = light.over_mm(bassSide, line_rad) / Math.cos(bow_rad - line_rad);
        return new BowLimits(
                Disc.tangent_rad(bassSide, pressed),
                Disc.tangent_rad(pressed, trebleSide),
                pressed.over_mm(bassSide, line_rad),
                Math.max(0, room_mm) / played.give_mm_N());
    }

    /** Between two limits; on an outer string without a measured edge, the one limit there is. */
    private static double halfway_rad(double bass_rad, double treble_rad) {
        if (Double.isNaN(bass_rad)) {
            return treble_rad;
        }
        return Double.isNaN(treble_rad) ? bass_rad : (bass_rad + treble_rad) / 2;
    }
}
