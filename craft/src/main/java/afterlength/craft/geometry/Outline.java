package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.LineStringExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** A closed figure given by the points of its edge; the first point is not repeated at the end. */
public record Outline(List<Point> points) {
    private static final GeometryFactory PLANE = new GeometryFactory();
    /** Segments per quarter turn where an inset runs round an inner corner: finer than a pen line. */
    private static final int QUARTER_SEGMENTS = 16;

    private static final double MITRE_LIMIT = 20;

    public Outline {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("outline has " + points.size() + " points; give at least 3");
        }
    }

    public double width_mm() {
        return polygon().getEnvelopeInternal().getWidth();
    }

    public double length_mm() {
        return polygon().getEnvelopeInternal().getHeight();
    }

    /** True when the edge never crosses or touches itself. */
    public boolean isSimple() {
        return polygon().isValid();
    }

    public boolean contains(Outline other) {
        return polygon().contains(other.polygon());
    }

    public boolean contains(Point point) {
        return polygon().contains(PLANE.createPoint(coordinate(point)));
    }

    /** Shortest way from the edge of one figure to the edge of the other. */
    public double edgeDistanceTo_mm(Outline other) {
        return polygon().getBoundary().distance(other.polygon().getBoundary());
    }

    /** The widths between the outermost crossings of a level line with the edge; 0 where the line misses. */
    public double widthAt_mm(double y_mm) {
        double reach_mm = width_mm() * 2;
        Coordinate[] level = {new CoordinateXY(-reach_mm, y_mm), new CoordinateXY(reach_mm, y_mm)};
        return PLANE.createLineString(level)
                .intersection(polygon())
                .getEnvelopeInternal()
                .getWidth();
    }

    /**
     * The line that runs everywhere the same distance inside the edge, as the purfling does. Corners stay sharp, the way
     * purfling is mitred. Refuses a distance at which the figure falls apart or vanishes.
     */
    public Outline inset(double distance_mm) {
        BufferParameters corners = new BufferParameters(
                QUARTER_SEGMENTS, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        if (BufferOp.bufferOp(polygon(), -distance_mm, corners) instanceof Polygon inner && !inner.isEmpty()) {
            return from(inner);
        }
        throw new IllegalArgumentException("inset " + distance_mm + " mm leaves no single figure of an outline "
                + Math.round(width_mm()) + " mm wide; give a smaller distance");
    }

    /**
     * Fewer points, none of the left-out ones further than the tolerance from the piece of edge that replaces it; the new edge may
     * cross itself where the figure is thinner than that. A figure of which no three points would be left stays as it is.
     */
    public Outline simplified(double tolerance_mm) {
        // As a line that returns to its beginning: the point where a ring begins would be left out last, measured from
        // the new edge
        // only, and points beside it could then lie almost twice as far off.
        LineString edge = PLANE.createLineString(ring());
        Coordinate[] simple =
                DouglasPeuckerSimplifier.simplify(edge, tolerance_mm).getCoordinates();
        return simple.length <= 3 ? this : new Outline(pointsOf(simple).subList(0, simple.length - 1));
    }

    /** The stretches of the edge that are not covered by other figures lying on top, each as a run of points. */
    public List<List<Point>> edgeOutside(List<Outline> covers) {
        Geometry edge = polygon().getExteriorRing();
        for (Outline cover : covers) {
            edge = edge.difference(cover.polygon());
        }
        LineMerger merger = new LineMerger();
        merger.add(edge);
        return runs(merger.getMergedLineStrings());
    }

    /** Parallel lines across the figure, as a pen shades it: at a direction (0 along x, 90 along y) and a spacing. */
    public List<List<Point>> hatched(double direction_deg, double spacing_mm) {
        Envelope box = polygon().getEnvelopeInternal();
        double reach_mm = box.getDiameter();
        int count = (int) (reach_mm / spacing_mm);
        Geometry lines = PLANE.createMultiLineString(IntStream.rangeClosed(-count / 2, count / 2)
                .mapToObj(i -> PLANE.createLineString(new Coordinate[] {
                    new CoordinateXY(-reach_mm, i * spacing_mm), new CoordinateXY(reach_mm, i * spacing_mm)
                }))
                .toArray(LineString[]::new));
        AffineTransformation place = AffineTransformation.rotationInstance(Math.toRadians(direction_deg))
                .translate(box.centre().getX(), box.centre().getY());
        Geometry inside = place.transform(lines).intersection(polygon());
        return runs(LineStringExtracter.getLines(inside));
    }

    private Polygon polygon() {
        return PLANE.createPolygon(ring());
    }

    /** The first point comes once more at the end. */
    private Coordinate[] ring() {
        List<Coordinate> ring = new ArrayList<>();
        points.forEach(point -> ring.add(coordinate(point)));
        ring.add(ring.get(0));
        return ring.toArray(Coordinate[]::new);
    }

    private static List<List<Point>> runs(Collection<?> lines) {
        return lines.stream()
                .map(line -> pointsOf(((LineString) line).getCoordinates()))
                .toList();
    }

    private static List<Point> pointsOf(Coordinate[] coordinates) {
        return Arrays.stream(coordinates)
                .map(place -> Point.of(place.getX(), place.getY()))
                .toList();
    }

    private static Outline from(Polygon polygon) {
        List<Point> ring = pointsOf(polygon.getExteriorRing().getCoordinates());
        return new Outline(ring.subList(0, ring.size() - 1));
    }

    private static Coordinate coordinate(Point point) {
        return new CoordinateXY(point.x_mm(), point.y_mm());
    }
}
