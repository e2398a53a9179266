package afterlength.craft.setup;

/**
 * All strings, and the edges of the waist, cut by the plane the bow moves in: square to the centre line, at one distance from the
 * bridge. One string is played, its neighbours are open and not pressed.
 *
 * <p>A stopped string lies with its underside on the board under the finger and runs straight from there to its place on the
 * bridge. Pressing moves it by {@code δ = N b (S - b) / (T S)} square to a bow halfway between its two limits, those taken before
 * pressing. Left out: the stretch of the string under the bow, the width and tilt of the hair, and the slope of belly and edges
 * against the board line between bow and bridge.
 */
final class BowSection {
    private final StringRun[] runs;
    private final double distance_mm;
    /** Bass edge, strings from bass to treble, treble edge. */
    private final Disc[] open;

    BowSection(StringRun[] runs, Disc bassEdge, Disc trebleEdge, double distance_mm) {
        this.runs = runs;
        this.distance_mm = distance_mm;
        open = new Disc[runs.length + 2];
        open[0] = bassEdge;
        open[runs.length + 1] = trebleEdge;
        for (int i = 0; i < runs.length; i++) {
            open[i + 1] = runs[i].open(distance_mm);
        }
    }

    BowLimits limits(int string, Touch touch) {
        Disc bassSide = open[string];
        Disc trebleSide = open[string + 2];
        boolean isOpen = touch.stopped_mm() >= runs[string].speakingLength_mm();
        Disc light = isOpen ? open[string + 1] : runs[string].stopped(touch.stopped_mm(), distance_mm);
        double bow_rad = halfway_rad(Disc.tangent_rad(bassSide, light), Disc.tangent_rad(light, trebleSide));
        Disc pressed = light.pressed(touch.depth_mm(), bow_rad);
        double line_rad = Disc.tangent_rad(bassSide, trebleSide);
        double room_mm = light.over_mm(bassSide, line_rad) / Math.cos(bow_rad - line_rad);
        return new BowLimits(
                Disc.tangent_rad(bassSide, pressed),
                Disc.tangent_rad(pressed, trebleSide),
                pressed.over_mm(bassSide, line_rad),
                touch.give_mm_N() > 0 ? Math.max(0, room_mm) / touch.give_mm_N() : Double.NaN);
    }

    /** Between two limits; on an outer string without a measured edge, the one limit there is. */
    private static double halfway_rad(double bass_rad, double treble_rad) {
        if (Double.isNaN(bass_rad)) {
            return treble_rad;
        }
        return Double.isNaN(treble_rad) ? bass_rad : (bass_rad + treble_rad) / 2;
    }
}
