package afterlength.craft.setup;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/** A smooth edge through given wood points: the natural cubic spline, as a thin batten held at the points would lie. */
public final class CrownSpline implements CrownCurve {
    private final PolynomialSplineFunction batten;
    private final double[] knots;

    CrownSpline(List<CrossPoint> woodPoints) {
        batten = new SplineInterpolator()
                .interpolate(
                        woodPoints.stream().mapToDouble(CrossPoint::y_mm).toArray(),
                        woodPoints.stream().mapToDouble(CrossPoint::z_mm).toArray());
        knots = batten.getKnots();
    }

    @Override
    public double height_mm(double y_mm) {
        return batten.value(Math.min(Math.max(y_mm, knots[0]), knots[knots.length - 1]));
    }

    @Override
    public CrossPoint highest() {
        return Stream.concat(Arrays.stream(knots).boxed(), levelPlaces())
                .map(y_mm -> new CrossPoint(y_mm, height_mm(y_mm)))
                .max(Comparator.comparingDouble(CrossPoint::z_mm))
                .orElseThrow();
    }

    /** Where the edge runs level: the zeros of the slope of each piece that lie in it. */
    private Stream<Double> levelPlaces() {
        PolynomialFunction[] pieces = batten.getPolynomials();
        return IntStream.range(0, pieces.length)
                .boxed()
                .flatMap(i -> zerosOfSlope(pieces[i].getCoefficients())
                        .filter(along_mm -> along_mm > 0 && along_mm < knots[i + 1] - knots[i])
                        .mapToObj(along_mm -> knots[i] + along_mm));
    }

    private static DoubleStream zerosOfSlope(double[] coefficients) {
        double[] k = Arrays.copyOf(coefficients, 4);
        double root = Math.sqrt(k[2] * k[2] - 3 * k[1] * k[3]);
        // in the form that keeps its digits when the cubic term is small
        double larger = -(k[2] + Math.copySign(root, k[2]));
        return DoubleStream.of(larger / (3 * k[3]), k[1] / larger).filter(Double::isFinite);
    }

    @Override
    public List<CrossPoint> points(int count) {
        double width_mm = knots[knots.length - 1] - knots[0];
        return IntStream.range(0, count)
                .mapToDouble(i -> knots[0] + width_mm * i / (count - 1))
                .mapToObj(y_mm -> new CrossPoint(y_mm, height_mm(y_mm)))
                .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CrownSpline spline
                && spline.points(knots.length * 2).equals(points(knots.length * 2));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(knots);
    }
}
