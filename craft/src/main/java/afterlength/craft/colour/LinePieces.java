package afterlength.craft.colour;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walks along a line on a picture and compares, piece by piece, the strip on it with its flanks. */
final class LinePieces {
    private static final double PIECE_MM = 2;
    private static final double STRIP_MM = 0.2;
    private static final double FLANK_FROM_MM = 0.8;
    private static final double FLANK_TO_MM = 2;
    private static final double STEP_MM = 0.1;

    private final LinearPicture seen;

    LinePieces(LinearPicture seen) {
        this.seen = seen;
    }

    /** ΔE00 of each piece of the line. */
    double[] differences(List<Point> line) {
        List<Station> stations = stations(line);
        int inPiece = (int) Math.round(PIECE_MM / STEP_MM);
        int pieces = Math.max(1, stations.size() / inPiece);
        double[] differences = new double[pieces];
        for (int piece = 0; piece < pieces; piece++) {
            int from = piece * inPiece;
            differences[piece] = difference(stations.subList(from, Math.min(stations.size(), from + inPiece)));
        }
        return differences;
    }

    /** The line moved to its side; empty when it would leave the picture. */
    Optional<List<Point>> findBeside(List<Point> line, double shift_mm) {
        Point first = line.get(0);
        Point last = line.get(line.size() - 1);
        double length = Math.hypot(last.x_mm() - first.x_mm(), last.y_mm() - first.y_mm());
        double across = length > 0 ? (last.x_mm() - first.x_mm()) / length : 1;
        double along = length > 0 ? (last.y_mm() - first.y_mm()) / length : 0;
        List<Point> moved = line.stream()
                .map(place -> new Point(place.x_mm() - shift_mm * along, place.y_mm() + shift_mm * across))
                .toList();
        boolean inside = moved.stream().allMatch(place -> seen.holds(place.x_mm(), place.y_mm()));
        return inside ? Optional.of(moved) : Optional.empty();
    }

    private double difference(List<Station> piece) {
        MeanLab strip = new MeanLab();
        MeanLab flanks = new MeanLab();
        for (Station station : piece) {
            addAcross(station, STEP_MM / 2 - STRIP_MM, STRIP_MM, strip);
            addAcross(station, FLANK_FROM_MM + STEP_MM / 2, FLANK_TO_MM, flanks);
            addAcross(station, STEP_MM / 2 - FLANK_TO_MM, -FLANK_FROM_MM, flanks);
        }
        return ColourDifference.of(flanks.mean(), strip.mean());
    }

    private void addAcross(Station station, double from_mm, double to_mm, MeanLab mean) {
        for (double off_mm = from_mm; off_mm < to_mm; off_mm += STEP_MM) {
            mean.add(Lab.of(station.beside(seen, off_mm), Xyz.SRGB_WHITE));
        }
    }

    private static List<Station> stations(List<Point> line) {
        List<Station> stations = new ArrayList<>();
        for (int n = 1; n < line.size(); n++) {
            Point from = line.get(n - 1);
            Point to = line.get(n);
            double length_mm = Math.hypot(to.x_mm() - from.x_mm(), to.y_mm() - from.y_mm());
            int steps = (int) Math.ceil(length_mm / STEP_MM);
            for (int step = 0; step < steps; step++) {
                double part = (step + 0.5) / steps;
                stations.add(new Station(
                        from.x_mm() + part * (to.x_mm() - from.x_mm()),
                        from.y_mm() + part * (to.y_mm() - from.y_mm()),
                        (to.x_mm() - from.x_mm()) / length_mm,
                        (to.y_mm() - from.y_mm()) / length_mm));
            }
        }
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("a line needs two places that differ");
        }
        return stations;
    }

    /** A place on the line and the direction the line has there. */
    private record Station(double x_mm, double y_mm, double alongX, double alongY) {
        private Xyz beside(LinearPicture picture, double off_mm) {
            return picture.at_mm(x_mm - off_mm * alongY, y_mm + off_mm * alongX);
        }
    }

    /** Sums colours. */
    private static final class MeanLab {
        private double lightness;
        private double a;
        private double b;
        private int count;

        private void add(Lab colour) {
            lightness += colour.lightness();
            a += colour.a();
            b += colour.b();
            count++;
        }

        private Lab mean() {
            return new Lab(lightness / count, a / count, b / count);
        }
    }
}
