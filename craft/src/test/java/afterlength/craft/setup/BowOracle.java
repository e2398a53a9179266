package afterlength.craft.setup;

import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/**
 * Contact of bow and strings solved another way: everything the program has a formula for is searched here. Clearance is the
 * shortest of many distances to the board, the crown is met by halving, and the bow is a line that is turned in small steps on a
 * string until it would cut into the next one.
 */
public final class BowOracle {
    private static final double STEP_deg = 0.25;

    /** Where a string is cut: y, z of its centre, its radius. */
    record Cut(double y, double z, double r) {
        /** Distance from the origin of the line of this angle that lies on the string. */
        double support(double angle_deg) {
            double rad = Math.toRadians(angle_deg);
            return z * Math.cos(rad) - y * Math.sin(rad) + r;
        }
    }

    /** What the oracle finds for one string; not a number where nothing is met. */
    public record Found(double bass_deg, double treble_deg, double margin_mm) {}

    private final BridgeInputs inputs;
    private final int count;
    private final double[] nutY;
    private final double[] bridgeY;
    private final double[] nutZ;
    private final double[] bridgeZ;

    public BowOracle(BridgeInputs inputs) {
        this.inputs = inputs;
        count = inputs.strings().size();
        nutY = inputs.nutSpacing().places_mm(inputs.strings());
        bridgeY = inputs.bridgeSpacing().places_mm(inputs.strings());
        nutZ = new double[count];
        for (int i = 0; i < count; i++) {
            double share = (double) i / (count - 1);
            double clearance = inputs.nutClearance_mm().bass_mm() * (1 - share)
                    + inputs.nutClearance_mm().treble_mm() * share;
            nutZ[i] = heightWithClearance(inputs.board().radiusAtNut_mm(), nutY[i], clearance);
        }
        bridgeZ = crownUndersides();
    }

    public double bridgeUnderside(int string) {
        return bridgeZ[string];
    }

    private double heightWithClearance(double radius, double y, double clearance) {
        boolean square = inputs.clearanceConvention() == ClearanceConvention.SQUARE;
        double low = -radius;
        double high = clearance + 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double room =
                    square ? shortestWay(radius, y, middle) : middle + radius - Math.sqrt(radius * radius - y * y);
            if (room < clearance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** To the arc, by closing in on the nearest of its points; negative below it. */
    private static double shortestWay(double radius, double y, double z) {
        DoubleUnaryOperator away =
                turn -> Math.hypot(radius * Math.sin(turn) - y, radius * Math.cos(turn) - radius - z);
        double left = -1.5;
        double right = 1.5;
        for (int i = 0; i < 60; i++) {
            double third = (right - left) / 3;
            if (away.applyAsDouble(left + third) < away.applyAsDouble(right - third)) {
                right -= third;
            } else {
                left += third;
            }
        }
        double above = Math.signum(Math.hypot(y, z + radius) - radius);
        return above * away.applyAsDouble((left + right) / 2);
    }

    private double[] crownUndersides() {
        int last = count - 1;
        double bassZ = outerUnderside(0, inputs.boardEndClearance_mm().bass_mm()) + groove(0);
        double trebleZ = outerUnderside(last, inputs.boardEndClearance_mm().treble_mm()) + groove(last);
        double radius = ((RadiusCrown) inputs.crown()).radius_mm();
        double middleY = (bridgeY[0] + bridgeY[last]) / 2;
        double middleZ = (bassZ + trebleZ) / 2;
        double runY = bridgeY[last] - bridgeY[0];
        double runZ = trebleZ - bassZ;
        double run = Math.hypot(runY, runZ);
        double down = first(0, 4 * radius, d -> Math.hypot(run / 2, d) >= radius);
        double centreY = middleY + down * runZ / run;
        double centreZ = middleZ - down * runY / run;
        double[] undersides = new double[count];
        for (int i = 0; i < count; i++) {
            double y = bridgeY[i] - centreY;
            undersides[i] = centreZ + first(0, 2 * radius, up -> Math.hypot(y, up) >= radius) - groove(i);
        }
        return undersides;
    }

    private double outerUnderside(int string, double clearance) {
        double share = inputs.board().length_mm() / inputs.speakingLength_mm();
        double endY = nutY[string] * (1 - share) + bridgeY[string] * share;
        double endZ = heightWithClearance(inputs.board().radius_mm(), endY, clearance);
        return first(-200, 200, z -> nutZ[string] * (1 - share) + z * share >= endZ);
    }

    private double groove(int string) {
        return inputs.grooveFraction() * inputs.strings().get(string).diameter_mm();
    }

    /** The first value at which a condition comes true. */
    private static double first(double low, double high, DoublePredicate reached) {
        double before = low;
        double after = high;
        for (int i = 0; i < 80; i++) {
            double middle = (before + after) / 2;
            if (reached.test(middle)) {
                after = middle;
            } else {
                before = middle;
            }
        }
        return after;
    }

    public Found find(int string, BowPlace place) {
        Cut bassSide = neighbour(string - 1, place.distance_mm());
        Cut trebleSide = neighbour(string + 1, place.distance_mm());
        Cut light = cut(string, place.distance_mm(), place.stoppedAt_mm());
        double bass = turnedUntilMeeting(light, bassSide, 1);
        double treble = turnedUntilMeeting(light, trebleSide, -1);
        double halfway =
                Math.toRadians(Double.isNaN(bass) ? treble : Double.isNaN(treble) ? bass : (bass + treble) / 2);
        double depth = depth(string, place);
        Cut pressed = new Cut(light.y() + depth * Math.sin(halfway), light.z() - depth * Math.cos(halfway), light.r());
        double line = turnedUntilMeeting(bassSide, trebleSide, -1);
        return new Found(
                turnedUntilMeeting(pressed, bassSide, 1),
                turnedUntilMeeting(pressed, trebleSide, -1),
                pressed.support(line) - bassSide.support(line));
    }

    private double depth(int string, BowPlace place) {
        if (place.force_N() == 0) {
            return 0;
        }
        FittedString fitted = inputs.strings().get(string);
        double length = place.stoppedAt_mm().getOrDefault(fitted.name(), inputs.speakingLength_mm());
        double tension = fitted.pull().findTension_N(inputs.speakingLength_mm()).orElseThrow();
        // the two sides of the bent string carry the force: N = T (δ/b + δ/(S - b))
        double perMillimetre = tension / place.distance_mm() + tension / (length - place.distance_mm());
        return place.force_N() / perMillimetre;
    }

    private Cut neighbour(int string, double distance) {
        if (string >= 0 && string < count) {
            return cut(string, distance, Map.of());
        }
        Waist waist = inputs.waist();
        if (waist == null) {
            return new Cut(Double.NaN, Double.NaN, 0);
        }
        double side = string < 0 ? -0.5 : 0.5;
        return new Cut(side * waist.width_mm(), -inputs.projection_mm() - waist.edgeDrop_mm(), 0);
    }

    private Cut cut(int string, double distance, Map<String, Double> stops) {
        double length = inputs.speakingLength_mm();
        double radius = inputs.strings().get(string).diameter_mm() / 2;
        String name = inputs.strings().get(string).name();
        Double stop = stops.get(name);
        double farX = stop == null ? 0 : length - stop;
        double farY = nutY[string] + (bridgeY[string] - nutY[string]) * farX / length;
        double farZ = stop == null ? nutZ[string] : finger(string, farX, farY);
        double share = (length - distance - farX) / (length - farX);
        return new Cut(
                farY + (bridgeY[string] - farY) * share, farZ + (bridgeZ[string] - farZ) * share + radius, radius);
    }

    private double finger(int string, double x, double y) {
        Board board = inputs.board();
        double along = x / board.length_mm();
        double radius = board.radiusAtNut_mm() * (1 - along) + board.radius_mm() * along;
        BassTreble scoop = board.scoop_mm();
        double share = (double) string / (count - 1);
        double deepest = scoop == null ? 0 : scoop.bass_mm() * (1 - share) + scoop.treble_mm() * share;
        double fromMiddle = 2 * along - 1;
        double surface = first(-radius, 1, z -> Math.hypot(y, z + radius) >= radius);
        return surface - deepest * (1 - fromMiddle * fromMiddle);
    }

    /** Turns the bow on one string, towards +1 rising or -1 falling to the treble, until it would cut into the other. */
    private static double turnedUntilMeeting(Cut own, Cut other, int sense) {
        if (Double.isNaN(other.y()) || Double.isNaN(own.y())) {
            return Double.NaN;
        }
        DoublePredicate meets = turn -> other.support(sense * turn) > own.support(sense * turn);
        for (double turn = -89.9; turn < 89.9; turn += STEP_deg) {
            if (meets.test(turn)) {
                return sense * first(turn - STEP_deg, turn, meets);
            }
        }
        throw new AssertionError("the bow meets nothing");
    }
}
