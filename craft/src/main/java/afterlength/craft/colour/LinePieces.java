package afterlength.craft.colour;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Walks along a line on a picture and compares, piece by piece, the strip on it with its flanks. */
final class LinePieces {
    private static final double PIECE_MM = 2;
    private static final double STEP_MM = 0.1;

    /** Where across the line its own colour is read. Source: docs/sources.md#colour-study. */
    private static final double[] STRIP_MM = {-0.15, -0.075, 0, 0.075, 0.15};

    /** Where the colour beside it is read, on either side. Source: docs/sources.md#colour-study. */
    private static final double[] FLANK_MM = {0.8, 1.0, 1.2, 1.4, 1.6, 1.8, 2.0};

    private final LabPicture seen;

    LinePieces(LinearPicture seen) {
        this.seen = LabPicture.of(seen);
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

    /** Whether the whole line lies in the picture. */
    boolean hold(List<Point> line) {
        return line.stream().allMatch(place -> seen.holds(place.x_mm(), place.y_mm()));
    }

    /** ΔE00 between the flanks of the whole line and what lies some way to its side. */
    double beside(List<Point> line, double off_mm) {
        MeanLab there = new MeanLab();
        MeanLab flanks = new MeanLab();
        for (Station station : stations(line)) {
            there.add(station.beside(seen, off_mm));
            addFlanks(station, flanks);
        }
        return ColourDifference.of(flanks.mean(), there.mean());
    }

    /** The line moved to its side, at right angles to the way from its first place to its last. */
    static List<Point> moved(List<Point> line, double shift_mm) {
        Point first = line.get(0);
        Point last = line.get(line.size() - 1);
        double length = Math.hypot(last.x_mm() - first.x_mm(), last.y_mm() - first.y_mm());
        double across = length > 0 ? (last.x_mm() - first.x_mm()) / length : 1;
        double along = length > 0 ? (last.y_mm() - first.y_mm()) / length : 0;
        return line.stream()
                .map(place -> new Point(place.x_mm() - shift_mm * along, place.y_mm() + shift_mm * across))
                .toList();
    }

    private double difference(List<Station> piece) {
        MeanLab strip = new MeanLab();
        MeanLab flanks = new MeanLab();
        for (Station station : piece) {
            for (double off_mm : STRIP_MM) {
                strip.add(station.beside(seen, off_mm));
            }
            addFlanks(station, flanks);
        }
        return ColourDifference.of(flanks.mean(), strip.mean());
    }

    private void addFlanks(Station station, MeanLab flanks) {
        for (double off_mm : FLANK_MM) {
            flanks.add(station.beside(seen, off_mm));
            flanks.add(station.beside(seen, -off_mm));
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
        private Lab beside(LabPicture picture, double off_mm) {
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
